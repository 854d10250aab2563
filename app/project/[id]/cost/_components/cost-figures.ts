import {
  breakEven,
  type CostConventions,
  costDifference,
  type Discounting,
  flowPresentValue,
  inCurrency,
  placeOfLine,
  shownCents,
  tyingRates,
} from "#lib/cost";
import type { BidEvaluation } from "#lib/evaluation";
import {
  type Figure,
  figureFromInterval,
  intervalOfFigure,
  known,
  unknown,
  type Working,
  type WorkingInput,
} from "#lib/figure";
import { type CurrencyCode, formatMoneyExact, formatValue, measured } from "#lib/quantity";
import { partWords } from "./part-words";
import type { PricedBid } from "./priced-bid";

const derived = (label: string, cents: number, figure: string, currency: CurrencyCode): WorkingInput => ({
  label,
  text: formatMoneyExact(shownCents(cents), currency),
  from: { kind: "figure", figure },
});

/** The currency of a bid's figures, which name it unless they are in US dollars. */
const currencyOf = ({ presentValue }: BidEvaluation["cost"]): CurrencyCode =>
  presentValue.kind === "unknown" ? "USD" : (presentValue.currency ?? "USD");

const openAbove = (cents: number, working: Working): Figure<"money"> =>
  figureFromInterval(
    "money",
    { low: measured("money", cents), high: measured("money", Number.POSITIVE_INFINITY) },
    working,
  );

/** What the owner adds is a lower bound where an item of scope has no figure yet. */
const leastOrKnown = (cost: BidEvaluation["cost"], cents: number, working: Working): Figure<"money"> =>
  inCurrency(
    cost.presentValue.kind === "at-least"
      ? openAbove(cents, working)
      : known("money", measured("money", cents), working),
    currencyOf(cost),
  );

/** What the owner adds at the base date for things a bid leaves out; unknown where the bid has no price of its own. */
export function ownersAdditions({ cost }: BidEvaluation): Figure<"money"> {
  const { priceAtBaseDate, priceAsBid } = cost;
  const inAll = intervalOfFigure(priceAtBaseDate)?.low;
  if (inAll === undefined || priceAsBid.kind !== "known") return priceAtBaseDate;
  return leastOrKnown(cost, inAll - priceAsBid.value, {
    formula: "owner’s additions = price at the base date − price as bid",
    inputs: [
      derived("Price at the base date", inAll, "priceAtBaseDate", currencyOf(cost)),
      derived("Price as bid", priceAsBid.value, "priceAsBid", currencyOf(cost)),
    ],
    assumptions: [],
    source: "derived",
  });
}

/** How much of the present value rests on prices that the owner estimated. */
export function ownersEstimates({ id, cost }: BidEvaluation): Figure<"money"> {
  if (cost.presentValue.kind === "unknown") return cost.presentValue;
  const estimated = cost.entries.filter(
    ({ givenBy, presentValue }) => givenBy === "owner-estimate" && presentValue !== 0,
  );
  const origins = new Map(cost.lines.map(({ line, origin }) => [line.id, origin]));
  const cents = estimated.reduce((sum, { presentValue }) => sum + presentValue, 0);
  return leastOrKnown(cost, cents, {
    formula: "owner’s estimates = Σ present values of the prices that the owner estimated",
    inputs: estimated.map(({ line, label, part, shown }) => ({
      label: `${label}: ${partWords[part]}`,
      text: formatMoneyExact(shown, currencyOf(cost)),
      from: placeOfLine(line, id, origins.get(line)),
    })),
    assumptions: ["A life that the owner estimated for a part that the bid prices is not counted here."],
    source: "derived",
  });
}

/** How much more a bid costs than the cheapest one, and what would make the two cost the same. */
export type Tie = Readonly<{
  other: PricedBid;
  share: number;
  /**
   * By how much the price at the base date would have to fall: exact, as that price is not discounted. Only a bound
   * where one of the two costs is the least that it can be, and not known where both are.
   */
  fall: Figure<"money">;
  /** The price that would be left, in cents. */
  leaves: number;
  rates:
    | Readonly<{ kind: "at"; rates: readonly Figure<"fraction">[]; beyond: string }>
    | Readonly<{ kind: "everywhere" | "nowhere" }>;
}>;

/** Real rates a year among which a tie is looked for. @source common practice, no source */
export const soughtRates = { lowest: 0, highest: 0.15 } as const;

/** What would make a bid cost as much as the cheapest one. */
export function tieWith(cheapest: PricedBid, other: PricedBid, conventions: CostConventions): Tie {
  const { cents, share } = costDifference(cheapest.presentValue, other.presentValue);
  const reached = breakEven({
    at: 0,
    firstCost: cheapest.presentValue,
    secondCost: other.presentValue,
    firstSlope: 0,
    secondSlope: -1, // what is paid at the base date is not discounted
  });
  const fall = reached.kind === "at" ? reached.value : cents;
  return {
    other,
    share,
    fall: inCurrency(
      boundedFall(fall, cheapest, other, fallWorking(cheapest, other, conventions.currency)),
      conventions.currency,
    ),
    leaves: other.priceAtBaseDate - fall,
    rates: tyingRateFigures(cheapest, other, conventions),
  };
}

/** An open cost of this bid makes the fall larger, one of the cheapest makes it smaller, and both leave it open. */
function boundedFall(fall: number, cheapest: PricedBid, other: PricedBid, working: Working): Figure<"money"> {
  if (!cheapest.isLeast)
    return other.isLeast ? openAbove(fall, working) : known("money", measured("money", fall), working);
  if (!other.isLeast)
    return figureFromInterval(
      "money",
      { low: measured("money", Number.NEGATIVE_INFINITY), high: measured("money", fall) },
      working,
    );
  return unknown("money", {
    kind: "outside-validity",
    what: "the fall in price",
    reason: "both bids have items of scope without a figure. Level these first.",
  });
}

const fallWorking = (cheapest: PricedBid, other: PricedBid, currency: CurrencyCode): Working => ({
  formula: "fall in price = present value of this bid − present value of the cheapest bid",
  inputs: [other, cheapest].map(({ bid, presentValue }) =>
    derived(`Present value, bid ${bid.letter}`, presentValue, "presentValue", currency),
  ),
  assumptions: [
    "Only what is paid at the base date falls; renewals, upkeep and removal stay as priced.",
    ...[other, cheapest].flatMap(({ bid, isLeast }) =>
      isLeast ? [`Bid ${bid.letter} has items without a figure: its cost here is the least that it can be.`] : [],
    ),
  ],
  source: "derived: the present worth factor of year 0 is 1",
});

function tyingRateFigures(cheapest: PricedBid, other: PricedBid, conventions: CostConventions): Tie["rates"] {
  const { timing, realRate } = conventions;
  const found = tyingRates({ first: cheapest.flows, second: other.flows, timing, ...soughtRates });
  if (found.kind !== "at") return found;
  const [only, ...more] = found.rates;
  const [side, end] = only > realRate.value ? ["Above", soughtRates.highest] : ["Below", soughtRates.lowest];
  const turns = more.length === 0 && worth(other, { rate: end, timing }) < worth(cheapest, { rate: end, timing });
  return {
    kind: "at",
    rates: found.rates.map((rate) => known("fraction", measured("fraction", rate), rateWorking(rate, conventions))),
    beyond: turns ? `${side} it bid ${other.bid.letter} costs less.` : "",
  };
}

const worth = ({ flows }: PricedBid, discounting: Discounting) =>
  flows.reduce((sum, flow) => sum + flowPresentValue(flow, discounting), 0);

/** Four decimals of a per cent, enough to redo the comparison by hand. */
const finely = (rate: number) => `${(rate * 100).toFixed(4)} %`;

const rateWorking = (rate: number, { realRate }: CostConventions): Working => ({
  formula: "Σ payment of one bid ÷ (1 + rate)^year = Σ payment of the other ÷ (1 + rate)^year",
  inputs: [
    { label: "Rate at which both sides are equal", text: finely(rate), from: { kind: "constant" } },
    { label: "Real rate of the study", text: realRate.asEntered, from: { kind: "brief", field: "money.realRate" } },
  ],
  assumptions: [
    `Looked for between ${formatValue("fraction", measured("fraction", soughtRates.lowest), "us")} and ${formatValue("fraction", measured("fraction", soughtRates.highest), "us")}, by halving.`,
  ],
  source: "derived; discounting as in 10 CFR 436.16",
});
