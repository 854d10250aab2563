import { type ExactQuantity, explainQuantity, failed, parseExact, type Result, succeeded } from "#lib/quantity";

/** A share per year or of a cost, beside its text. */
type Rate = Result<ExactQuantity<"fraction">, string>;

/** Reads a share and holds it against what can be meant; the limits catch slips, no computation needs them. */
function parseShare(asEntered: string, fits: (share: number) => boolean, what: string, expected: string): Rate {
  const parsed = parseExact("fraction", asEntered);
  // where no number stands at all, what is meant helps more than the units of a share
  if (!parsed.ok && !/\d/.test(asEntered)) {
    return failed(`“${asEntered.trim()}” was read for ${what}; expected a share in per cent, for example “3 %”.`);
  }
  if (!parsed.ok) return failed(explainQuantity(parsed.problem));
  return fits(parsed.value.value)
    ? succeeded(parsed.value)
    : failed(`“${asEntered}” was read for ${what}; expected ${expected}.`);
}

const inRange = (low: number, high: number) => (share: number) => share >= low && share <= high;

/** The real rate of a study, per year. */
export const parseRealRate = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(-0.5, 0.3), "the real rate", "−50 % to 30 % a year");

/** The nominal rate of a study, per year. */
export const parseNominalRate = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(-0.5, 0.5), "the nominal rate", "−50 % to 50 % a year");

/** General inflation, per year. */
export const parseInflation = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(-0.2, 0.3), "general inflation", "−20 % to 30 % a year");

/** Growth of a price per year over general inflation. */
export const parseEscalation = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(-0.5, 0.3), "the growth of a price", "−50 % to 30 % a year");

/** Share of the first cost that a renewal saves. */
export const parseRenewalSaving = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(0, 1), "the saving at renewal", "0 % to 100 % of the first cost");

/** Share of a part that each renewal replaces. */
export const parseReplacedShare = (asEntered: string): Rate =>
  parseShare(
    asEntered,
    (share) => share > 0 && share <= 1,
    "the share replaced",
    "more than 0 % and up to 100 % of the part",
  );

/** A price as a share of a sum; a discount is below zero. */
export const parseShareOfSum = (asEntered: string): Rate =>
  parseShare(asEntered, inRange(-0.5, 1), "a share of a sum", "−50 % to 100 % of the sum");

/** A share that a technical link works with. */
export const parseLinkShare = (asEntered: string, what: string): Rate =>
  parseShare(asEntered, inRange(0, 1), what, "0 % to 100 %");
