import { type Claim, quantityOf } from "#lib/claim";
import {
  abnormalPrices,
  type BidCost,
  bidFormArithmetic,
  countedLines,
  type LinkFacts,
  type MoneyFinding,
  type PriceLine,
  type ProjectCost,
  projectCost,
  resolvedLines,
} from "#lib/cost";
import { type Figure, intervalOfFigure, type Origin } from "#lib/figure";
import { onFirstReading, workedOutOnReading } from "#lib/once";
import { type In, intervalOf } from "#lib/quantity";
import { claimedFigure } from "./claimed-figure";
import type { Bid, Brief, InfillFigures, Project } from "./model";

/** What the money of a bid is worked out from. */
export type MoneyFacts = Readonly<{ bid: Bid; infill: InfillFigures }>;

/** The money of all bids: they are costed together, because a plug can be the median of the others. */
export type ProjectMoney = Readonly<{
  costs: readonly BidCost[];
  baseAlternative: ProjectCost["baseAlternative"];
  /** What the bid's own figures do not agree on, and prices that stand out, by bid; worked out when somebody asks. */
  findings: () => ReadonlyMap<string, readonly MoneyFinding[]>;
}>;

/** The area of the field in m². @throws RangeError for a field without one: its schema let it through */
export function squareMetresOf(area: Figure<"area">): In<"m²"> {
  const squareMetres = intervalOfFigure(area)?.low;
  if (squareMetres === undefined) throw new RangeError("a field without an area: its schema let it through");
  return squareMetres;
}

/** The bidder's lines that count by their place in the bid, with shares resolved; no plug and no link. */
export const pricesAsBid = ({ prices }: Bid, { money }: Brief, area: In<"m²">): readonly PriceLine[] =>
  resolvedLines(countedLines(prices, money).counted, area);

/** The costs of all bids of a project, levelled, with what is to be said of their prices. */
export function projectMoney(facts: readonly MoneyFacts[], project: Project, area: Figure<"area">): ProjectMoney {
  const { brief, requirements, costing } = project;
  const setting = {
    area: squareMetresOf(area),
    hoursPerYear: brief.use.hoursPerYear.value,
    conventions: brief.money,
    costing,
  };
  const testLocations = requirements.impact.testLocations;
  const bids = facts.map(({ bid, infill }) => {
    const { id, letter, prices } = bid;
    return { id, letter, prices, facts: linkFacts(bid, infill, { ...setting, testLocations }) };
  });
  const cost = projectCost(bids, setting);
  return {
    costs: cost.bids,
    baseAlternative: cost.baseAlternative,
    findings: onFirstReading(() => moneyFindings(facts, cost.bids, project, setting.area)),
  };
}

type FactsSetting = Readonly<{ area: In<"m²">; hoursPerYear: In<"h/year">; testLocations: number }>;

/** The technical figures that links compute with, each read off the bid when a link asks. */
function linkFacts(bid: Bid, infill: InfillFigures, { area, hoursPerYear, testLocations }: FactsSetting): LinkFacts {
  const known = {
    area,
    hoursPerYear,
    testLocations,
    infillMass: infill.stabilisingMass,
    weightClass: infill.weightClass,
  };
  return workedOutOnReading(known, {
    carpetMass: () => claimedFigure(bid.id, bid.claims, { property: "carpet-total-mass" }, null).figure,
    shockLayerLives: () => claimedLives(bid.id, bid.claims),
  });
}

function claimedLives(bid: string, claims: readonly Claim[]): Readonly<{ lives: number; from: Origin }> | null {
  const claim = claims.find(({ property }) => property === "shock-layer-lives");
  const quantity = claim === undefined ? null : quantityOf(claim, "shock-layer-lives");
  if (claim === undefined || quantity === null) return null;
  return { lives: intervalOf(quantity.reading).low, from: { kind: "claim", bid, claim: claim.id } };
}

function moneyFindings(
  facts: readonly MoneyFacts[],
  costs: readonly BidCost[],
  { brief, costing }: Project,
  area: In<"m²">,
): ReadonlyMap<string, readonly MoneyFinding[]> {
  const setting = { area, currency: brief.money.currency };
  const asBid = facts.map(({ bid }) => pricesAsBid(bid, brief, area));
  const screened = facts.map(({ bid }, index) => {
    const price = costs[index]?.priceAsBid;
    const priceAsBid = price?.kind === "known" ? price.value : null;
    return { id: bid.id, letter: bid.letter, lines: asBid[index] ?? [], priceAsBid };
  });
  const abnormal = abnormalPrices(screened, { ...setting, costing });
  return new Map(
    facts.map(({ bid: { id, prices, statedTotal, statedTotalInWords } }, index) => [
      id,
      [
        ...bidFormArithmetic(
          { bid: id, form: prices, lines: asBid[index] ?? [], statedTotal, statedTotalInWords },
          setting,
        ),
        ...(abnormal.get(id) ?? []),
      ],
    ]),
  );
}
