import type { EfficientStanding, LevelledCost, ValuedBid } from "#lib/evaluation";
import { listed } from "#lib/figure";
import { type CurrencyCode, formatMoney } from "#lib/quantity";

export const costWords = (cost: LevelledCost, currency: CurrencyCode): string =>
  cost.kind === "not-known"
    ? "not known"
    : `${cost.kind === "at-least" ? "at least " : ""}${formatMoney(cost.cents, currency)}`;

const ofStanding = (valued: readonly ValuedBid[], wanted: EfficientStanding) =>
  valued.filter(({ efficient }) => efficient === wanted);

/** Which bids give the most for their money, in sentences. No bid is said to be the right one: that is the weights' to say. */
export function valueWords(valued: readonly ValuedBid[], letterOf: (bid: string) => string): string {
  const names = (some: readonly ValuedBid[]) => listed(some.map(({ bid }) => `bid ${letterOf(bid)}`));
  const [efficient, open] = [ofStanding(valued, "in"), ofStanding(valued, "not-settled")];
  const beaten = ofStanding(valued, "not-in").map(({ bid, beatenBy }) =>
    beatenBy === null
      ? ""
      : `Bid ${letterOf(bid)} has no more points than bid ${letterOf(beatenBy)} and costs no less.`,
  );
  const unpriced = valued.filter(({ cost, efficient: standing }) => cost.kind === "not-known" && standing !== "out");
  return [
    "Up means more points, left means less money.",
    efficient.length === 0
      ? ""
      : `${capital(names(efficient))}: no other bid has as many points for as little money on the figures shown.`,
    ...beaten,
    open.length === 0
      ? ""
      : `For ${names(open)} this is not settled, because a cost is only known as “at least” or not at all.`,
    unpriced.length === 0 ? "" : `${capital(names(unpriced))} can’t be drawn without a cost.`,
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

const capital = (text: string): string => text.replace(/^./, (letter) => letter.toUpperCase());

/** How a bid stands, as a word for the table and the key. */
export const standingWords: Readonly<Record<EfficientStanding, string>> = {
  in: "none gives more for less",
  "not-in": "another gives as much for no more",
  "not-settled": "not settled",
  out: "fails a gate",
};
