import { type ExactQuantity, explainQuantity, failed, parseExact, type Result, succeeded } from "#lib/quantity";

/** A share per year or of a cost, beside its text. */
type Rate = Result<ExactQuantity<"fraction">, string>;

/** Reads a share and holds it against what can be meant; the limits catch slips, no computation needs them. */
function parseShare(asEntered: string, fits: (share: number) => boolean, what: string, expected: string): Rate {
  const parsed = parseExact("fraction", asEntered);
  if (!parsed.ok) return failed(explainQuantity(parsed.problem));
  return fits(parsed.value.value)
    ? succeeded(parsed.value)
    : failed(`“${asEntered}” was read for ${what}; expected ${expected}.`);
}

/** The real rate of a study, per year. */
export const parseRealRate = (asEntered: string): Rate =>
  parseShare(asEntered, (rate) => rate >= -0.5 && rate <= 0.3, "the real rate", "−50 % to 30 % a year");

/** Growth of a price per year over general inflation. */
export const parseEscalation = (asEntered: string): Rate =>
  parseShare(asEntered, (growth) => growth >= -0.5 && growth <= 0.3, "the growth of a price", "−50 % to 30 % a year");

/** Share of the first cost that a renewal saves. */
export const parseRenewalSaving = (asEntered: string): Rate =>
  parseShare(
    asEntered,
    (saving) => saving >= 0 && saving <= 1,
    "the saving at renewal",
    "0 % to 100 % of the first cost",
  );
