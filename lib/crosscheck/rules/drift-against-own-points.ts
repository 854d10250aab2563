import { agedPoints, type Claim, claimsFor, type MethodId, quantityOf } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { type In, type Interval, intervalOf, measured } from "#lib/quantity";
import { claimInput, inBoth } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { onOtherFields } from "../same-test";

/** How far repeated tests of one field differ. */
const scatterShare = 0.05;
/** Levels closer in age than this say little about a change in a year. */
const fewestYears = 1;

/** What a bid says of its drift has to be what its own levels show, from the youngest to the oldest. */
export const driftAgainstOwnPoints: Rule = {
  id: "drift-against-own-points",
  title: "The stated change a year is not that of the bid’s own levels",
  holds: "the stated change of G-max a year against the youngest and the oldest level of the bid by one method",
  tolerance: "5 % of the youngest level over the years between, for scatter between tests (common practice, no source)",
  check: (bid) =>
    claimsFor(bid.claims, "g-max-change-per-year").flatMap((claim) => {
      const stated = quantityOf(claim, "g-max-change-per-year");
      const shown = changeShown(bid, claim);
      if (stated === null || shown === null) return [];
      const { low, high } = intervalOf(stated.reading);
      const { change, scatter } = shown;
      if (low - scatter <= change.high && change.low <= high + scatter) return [];
      return [found(bid, claim, { low, high }, shown)];
    }),
};

type Shown = Readonly<{
  change: Interval<"g/year">;
  /** In g a year. */
  scatter: number;
  youngest: Claim;
  oldest: Claim;
}>;

/** The change that the levels of the bid show by the method of the claim, or by that of the requirements. */
function changeShown({ claims, impact }: CheckedBid, { method }: Claim): Shown | null {
  const wanted: MethodId = method === "not-stated" ? impact.method : method;
  const points = agedPoints(claims, "g-max", wanted);
  const [youngest, oldest] = [points[0], points.at(-1)];
  if (youngest === undefined || oldest === undefined) return null;
  const years = oldest.years - youngest.years;
  if (years < fewestYears) return null;
  const [from, to] = [intervalOf<string>(youngest.reading), intervalOf<string>(oldest.reading)];
  const perYear = (change: number): In<"g/year"> => measured("rateOfChange", change / years, "g/year");
  const start = Number.isFinite(from.high) ? from.high : from.low;
  return {
    change: { low: perYear(to.low - from.high), high: perYear(to.high - from.low) },
    scatter: perYear(start * scatterShare),
    youngest: youngest.claim,
    oldest: oldest.claim,
  };
}

function found(bid: CheckedBid, claim: Claim, stated: Interval<"g/year">, shown: Shown): Found {
  const { change, youngest, oldest } = shown;
  const [said, own] = [quantityInPhrase("rateOfChange", stated), quantityInPhrase("rateOfChange", change)];
  return {
    severity: "needs an answer",
    claims: [claim.id, youngest.id, oldest.id],
    overClaims: stated.high < change.low ? [claim.id] : [],
    told: () => ({
      sentence: say`The bid states a change of ${said} for G-max; its own levels change by ${own} from the youngest to the oldest.`,
      question: say`You state that G-max changes by ${said}, while the levels in your bid change by ${own}. Which fields and ages stand behind the stated change?`,
      working: {
        formula: "change a year = (oldest level − youngest level) ÷ years between",
        inputs: [claimInput(bid, claim), claimInput(bid, youngest), claimInput(bid, oldest)],
        assumptions: [
          `The levels of the bid change by ${inBoth("rateOfChange", change)}.`,
          "Repeated tests may differ by 5 % of the youngest level (common practice, no source).",
          ...(onOtherFields(youngest, oldest) ? ["The two levels are from two fields, which differ as such."] : []),
        ],
        source: "derived from the bid’s own levels",
      },
    }),
  };
}
