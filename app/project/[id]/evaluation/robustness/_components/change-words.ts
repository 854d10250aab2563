import { type ChangedThing, formatPoints, formatShare, judgedInWords, type SingleChange } from "#lib/evaluation";
import { type CurrencyCode, formatMoney, type UnitSystem } from "#lib/quantity";

/** How this reader sees quantities and money. */
export type Shown = Readonly<{ units: UnitSystem; currency: CurrencyCode }>;

type Enough = Extract<SingleChange["need"], { kind: "takes" }>;

/** What would have to be otherwise, in a sentence. Figures are those at which the bids are level. */
export function changeWords(changed: ChangedThing, { at, lever }: Enough, { units, currency }: Shown): string {
  switch (changed.kind) {
    case "figure": {
      const { measure } = changed.criterion;
      const bound = lever.furthest > lever.from ? "at least" : "at most";
      const needed = `“${changed.criterion.label}” would have to be ${bound} about ${judgedInWords(measure, at, units)}`;
      return changed.shown === null
        ? `${needed}, with the proof asked for; nothing that counts is shown now.`
        : `${needed}; the figure now is ${judgedInWords(measure, changed.shown, units)}.`;
    }
    case "price": {
      const less = formatMoney(changed.cents - at, currency);
      return `The price at the base date would have to be about ${less} lower: ${formatMoney(at, currency)}, not ${formatMoney(changed.cents, currency)}.`;
    }
    case "weight": {
      const move = at > changed.share ? "rise" : "fall";
      return `The weight of “${changed.criterion.label}” would have to ${move} from ${formatShare(changed.share)} to ${formatShare(at)} of all weights, the others keeping their proportions.`;
    }
  }
}

const kinds = ["figure", "price", "weight"] as const;

/** The changes that are enough alone: for each kind the one that takes the smallest part of its way, and all the rest. */
export function sortedChanges(changes: readonly SingleChange[]): Readonly<{
  smallest: readonly Readonly<{ changed: ChangedThing; need: Enough }>[];
  others: readonly Readonly<{ changed: ChangedThing; need: Enough }>[];
}> {
  const enough = changes.flatMap(({ changed, need }) => (need.kind === "takes" ? [{ changed, need }] : []));
  const smallest = kinds.flatMap((kind) => enough.filter(({ changed }) => changed.kind === kind).slice(0, 1));
  return { smallest, others: enough.filter((change) => !smallest.includes(change)) };
}

const nameOf = (changed: ChangedThing): string =>
  changed.kind === "price"
    ? "the price"
    : changed.kind === "weight"
      ? `the weight of “${changed.criterion.label}”`
      : `“${changed.criterion.label}”`;

/** Where nothing is enough alone: the change that comes nearest. */
export function nearestWords(changes: readonly SingleChange[]): string {
  const [nearest] = changes.flatMap(({ changed, need }) => (need.kind === "not-enough" ? [{ changed, need }] : []));
  const none = "No single change of a figure, the price or a weight is enough.";
  return nearest === undefined
    ? none
    : `${none} ${nameOf(nearest.changed).replace(/^./, (letter) => letter.toUpperCase())} moved as far as helps would still leave it ${formatPoints(nearest.need.shortAtFurthest)} points behind.`;
}
