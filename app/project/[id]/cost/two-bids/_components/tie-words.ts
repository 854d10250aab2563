import { type Amount, type ExploredIn, type ExploredTie, explainTies } from "#lib/cost";
import {
  type CurrencyCode,
  type ExactQuantity,
  formatMoneyExact,
  formatValue,
  inUnit,
  measured,
  type UnitOf,
  withCurrencySign,
} from "#lib/quantity";

/** What a tie is told with: the currency of the project, and which of the two costs is only a least so far. */
export type TieSetting = Readonly<{ currency: CurrencyCode; open: Readonly<{ first: boolean; second: boolean }> }>;

/** As a table shows a value, or with all the digits that it takes to redo the comparison by hand. */
type Digits = "rounded" | "in full";

const percent = (share: number, digits: Digits = "rounded"): string =>
  digits === "rounded"
    ? formatValue("fraction", measured("fraction", share), "us")
    : `${Number((share * 100).toFixed(4))} %`.replace("-", "−");

/** A price per unit times a share, in the unit in which it is written: "$5.72/ft²", "$0.095/lb". */
function unitPriceAt<D extends ExactQuantity["dimension"]>(
  { dimension, unit, value }: ExactQuantity<D>,
  share: number,
  currency: CurrencyCode,
  digits: Digits,
): string {
  const amount = inUnit(dimension, measured(dimension, value * share), unit as UnitOf<D>);
  const most = digits === "in full" ? 6 : Math.abs(amount) < 1 ? 3 : 2;
  const number = amount.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: most });
  return withCurrencySign(
    String(unit).replace("$", () => `$${number}`),
    currency,
  );
}

/** What a written price comes to at a share of it. */
function priceAt(price: Amount, share: number, currency: CurrencyCode, digits: Digits): string {
  switch (price.kind) {
    case "lump-sum":
      return formatMoneyExact(price.price.value * share, currency).replace(/\.00$/, "");
    case "per-area":
      return unitPriceAt(price.price, share, currency, digits);
    case "per-unit":
      return price.unitPrice.dimension === "money"
        ? formatMoneyExact(price.unitPrice.value * share, currency)
        : unitPriceAt(price.unitPrice, share, currency, digits);
    case "share":
      return `${percent(price.share.value * share, digits)} of its sum`;
  }
}

type Told = Pick<ExploredTie, "toldIn" | "price">;

/** A value of an explored input without the price that it makes: "118 %", "12 years", "4.2 %". */
export const shownIn = (toldIn: ExploredIn, value: number, digits: Digits = "rounded"): string =>
  toldIn === "years" ? `${value} ${value === 1 ? "year" : "years"}` : percent(value, digits);

/** A value of an explored input: "$5.72/ft² (118 % of the entered price)", "12 years", "4.2 %". */
export function shownAt(
  { toldIn, price }: Told,
  value: number,
  currency: CurrencyCode,
  digits: Digits = "rounded",
): string {
  if (toldIn !== "share" || price === null) return shownIn(toldIn, value, digits);
  const money = priceAt(price, value, currency, digits);
  return value === 1 ? money : `${money} (${percent(value, digits)})`;
}

/** What the values of an input are, for the head of an axis or a column. */
export const toldAs: Readonly<Record<ExploredIn, string>> = {
  share: "share of the figure as entered",
  years: "years",
  rate: "a year",
};

const standing = ", as far as figures stand";

/**
 * A tie as sure as the two costs are. What is still to come can only add to a cost that is a least, so it moves a tie to
 * the side on which that bid costs less.
 */
function asSure(text: string, { tied }: ExploredTie, value: number, { first, second }: TieSetting["open"]): string {
  if (!first && !second) return text;
  const below = tied.stretches.find(({ to }) => to === value)?.cheaper;
  const above = tied.stretches.find(({ from }) => from === value)?.cheaper;
  const open = first && second ? null : first ? "first" : "second";
  if (open === null || below === undefined || above === undefined || below === above) return `${text}${standing}`;
  if (below === open) return `at most ${text}`;
  return above === open ? `at least ${text}` : `${text}${standing}`;
}

/** The values at which two bids cost the same, within what was looked at; empty where there are none. */
export function tiesAt(tie: ExploredTie, { currency, open }: TieSetting): string {
  const { tied, toldIn } = tie;
  const shown = (value: number) => asSure(shownAt(tie, value, currency), tie, value, open);
  switch (tied.kind) {
    case "always-equal":
      return `everywhere${open.first || open.second ? standing : ""}`;
    case "line":
      return tied.inside && tied.at !== null ? shown(tied.at) : "";
    case "crossings":
      return tied.at.map(shown).join(" and ");
    case "steps": {
      const places = tied.between.map(([one, other]) => `between ${one} and ${shownIn(toldIn, other)}`).join("; ");
      return open.first || open.second ? `${places}${standing}` : places;
    }
  }
}

/** The answer in one or two sentences, with all digits and the bids by their letters. */
export function tieInWords(tie: ExploredTie, letterOf: (bid: string) => string, setting: TieSetting): string {
  const { tied, label, bid, toldIn } = tie;
  const told = explainTies(belowNothing(tie) ? { ...tied, kind: "crossings", at: [] } : tied, {
    nameOf: (id) => `bid ${letterOf(id)}`,
    input: bid === null ? `the ${label.toLowerCase()}` : `“${label}” of bid ${letterOf(bid)}`,
    show: (value) =>
      value === tied.from || value === tied.to
        ? shownIn(toldIn, value)
        : shownAt(tie, value, setting.currency, "in full"),
  });
  const openBids = [
    ...(setting.open.first ? [letterOf(tied.first)] : []),
    ...(setting.open.second ? [letterOf(tied.second)] : []),
  ];
  const least =
    openBids.length === 0
      ? ""
      : ` That is as far as figures stand: ${openBids.map((letter) => `bid ${letter}`).join(" and ")} ${openBids.length === 1 ? "costs" : "cost"} at least what counts here.`;
  return `${told}${least}`.replace(/^./u, (letter) => letter.toUpperCase());
}

/** Whether two bids would cost the same only at a price under nothing, which is none. */
const belowNothing = ({ tied, toldIn }: ExploredTie): boolean =>
  toldIn === "share" && tied.kind === "line" && tied.at !== null && tied.at < 0;
