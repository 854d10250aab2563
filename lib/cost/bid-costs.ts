import { type Figure, inSentence, type OwnersAlternative } from "#lib/figure";
import { onFirstReading, workedOutOnReading } from "#lib/once";
import type { In } from "#lib/quantity";
import type { BaseAlternative, Costing } from "./costing-model";
import { countedLines, type LeftOutLine } from "./counted-lines";
import { type BidToLevel, type LevelledBid, levelledBids } from "./levelling/levelled-bids";
import type { LevelledLine } from "./levelling/levelled-line";
import type { ScopeRow } from "./levelling/scope";
import { type LifeCycleCost, lifeCycleCost } from "./life-cycle-cost";
import type { LinkRow } from "./links/linked-lines";
import { type AgainstBase, againstBase, type Measured, type OpenCosts } from "./measures/against-base";
import type { CostConventions, PriceLine } from "./model";
import { resolvedLines } from "./resolved-lines";

/** What is asked of every bid: field, use and the owner's conventions. */
export type ProjectCosting = Readonly<{
  area: In<"m²">;
  hoursPerYear: In<"h/year">;
  conventions: CostConventions;
  costing: Costing;
}>;

/** The bidder's own prices over the study, without anything that the owner adds. */
export type CostAsBid = Readonly<{
  presentValue: Figure<"money">;
  priceAtBaseDate: Figure<"money">;
  equivalentAnnualCost: Figure<"money">;
}>;

/** What one bid costs, levelled, and how it was levelled. The figures of the life-cycle cost are the levelled ones. */
export type BidCost = LifeCycleCost &
  Readonly<{
    asBid: CostAsBid;
    /** Every line that counts, in the order of the bid, then plugs, then links. */
    lines: readonly LevelledLine[];
    leftOut: readonly LeftOutLine[];
    scope: readonly ScopeRow[];
    links: readonly LinkRow[];
    notes: readonly string[];
    /** How it stands to what the owner compares with; null where nothing is chosen or it is the base itself. */
    against: AgainstBase | null;
  }>;

/** What the owner's own alternative costs, and how long it can be used. */
export type AlternativeCost = LifeCycleCost &
  Readonly<{ label: string; lines: readonly PriceLine[]; leftOut: readonly LeftOutLine[] }>;

/** The costs of all bids, brought to one scope, and of the owner's own alternative. */
export type ProjectCost = Readonly<{ bids: readonly BidCost[]; baseAlternative: AlternativeCost | null }>;

/**
 * Costs all bids of a project. They are costed together because a plug can be the median of the other bids' prices.
 * @throws RangeError if the area is not above 0
 */
export function projectCost(bids: readonly BidToLevel[], project: ProjectCosting): ProjectCost {
  const levelled = levelledBids(bids, project.costing, project);
  const baseAlternative = alternativeCost(project.costing.baseAlternative, project);
  const base = baseOf(levelled, baseAlternative, project);
  return { bids: levelled.map((bid) => bidCost(bid, project, base)), baseAlternative };
}

/** What bids are held against: its name in words, its lines, and the bid that it is, if it is one. */
type Base = Measured & Readonly<{ name: string; bid: string | null; isOpen: boolean }>;

function baseOf(
  levelled: readonly LevelledBid[],
  alternative: AlternativeCost | null,
  { costing: { comparedWith, baseAlternative }, hoursPerYear }: ProjectCosting,
): Base | null {
  switch (comparedWith.kind) {
    case "nothing":
      return null;
    case "base-alternative":
      if (alternative === null || alternative.presentValue.kind !== "known") return null;
      return {
        ...{ name: inSentence(alternative.label), bid: null, lines: alternative.lines, isOpen: false },
        hoursPerYear: baseAlternative?.hoursPerYear?.value ?? null,
      };
    case "bid": {
      const bid = levelled.find(({ id }) => id === comparedWith.bid);
      if (bid === undefined) return null;
      return {
        ...{ name: `bid ${bid.letter}`, bid: bid.id, isOpen: lackingOf(bid).length > 0 },
        ...{ lines: bid.lines.map(({ line }) => line), hoursPerYear },
      };
    }
  }
}

/** What has no figure yet, in words. */
const lackingOf = ({ scope }: LevelledBid): readonly string[] =>
  scope.flatMap(({ label, outcome }) => (outcome.kind === "open" ? [inSentence(label)] : []));

function openCosts(isBidOpen: boolean, isBaseOpen: boolean): OpenCosts {
  if (isBidOpen) return isBaseOpen ? "both" : "bid";
  return isBaseOpen ? "base" : "neither";
}

function bidCost(bid: LevelledBid, project: ProjectCosting, base: Base | null): BidCost {
  const { area, conventions, hoursPerYear } = project;
  const lines = bid.lines.map(({ line }) => line);
  const lacking = lackingOf(bid);
  const setting = { bid: bid.id, area, hoursPerYear, conventions };
  const origins = new Map(bid.lines.map(({ line, origin }) => [line.id, origin]));
  const levelled = lifeCycleCost(lines, { ...setting, origins, lacking });
  const asBid = onFirstReading(() => {
    const own = lifeCycleCost(bid.asBid.flatMap(asTheBidderPrices), setting);
    const { presentValue, priceAtBaseDate, equivalentAnnualCost } = own;
    return { presentValue, priceAtBaseDate, equivalentAnnualCost };
  });
  const isHeld = base !== null && base.bid !== bid.id && levelled.presentValue.kind !== "unknown";
  const against = () =>
    isHeld
      ? againstBase({ lines, hoursPerYear }, base, {
          ...{ area, conventions, base: base.name },
          open: openCosts(lacking.length > 0, base.isOpen),
        })
      : null;
  const cost = {
    presentValue: levelled.presentValue,
    priceAtBaseDate: levelled.priceAtBaseDate,
    equivalentAnnualCost: levelled.equivalentAnnualCost,
    perHour: levelled.perHour,
    perAreaYear: levelled.perAreaYear,
    entries: levelled.entries,
    categories: levelled.categories,
    yearly: levelled.yearly,
    yearlyByCategory: levelled.yearlyByCategory,
    lines: bid.lines,
    leftOut: bid.leftOut,
    scope: bid.scope,
    links: bid.links,
    notes: bid.notes,
  };
  return workedOutOnReading(cost, {
    priceAsBid: () => asBid().priceAtBaseDate,
    atRates: () => levelled.atRates,
    asBid,
    against,
  });
}

/** The line without what the owner adds to it; none where the owner gives all of it. */
function asTheBidderPrices(line: PriceLine): readonly PriceLine[] {
  if (line.givenBy !== "bid") return [];
  if (line.kind !== "replacement-chain" || line.removal === null || line.removalGivenBy === "bid") return [line];
  return [{ ...line, removal: null }];
}

const ownersAlternative: OwnersAlternative = "base-alternative";

function alternativeCost(alternative: BaseAlternative | null, project: ProjectCosting): AlternativeCost | null {
  if (alternative === null) return null;
  const { area, conventions, hoursPerYear } = project;
  const { counted, leftOut } = countedLines(alternative.prices, conventions);
  const lines = resolvedLines(counted, area);
  const hours = alternative.hoursPerYear?.value ?? hoursPerYear;
  const cost = lifeCycleCost(lines, {
    ...{ bid: ownersAlternative, area, hoursPerYear: hours, conventions, pricedBy: "owner" },
  });
  return { ...cost, label: alternative.label, lines, leftOut };
}
