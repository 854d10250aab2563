import type { In } from "#lib/quantity";
import type { Costing } from "../costing-model";
import { countedLines, type LeftOutLine } from "../counted-lines";
import { type LinkRow, linkedLines } from "../links/linked-lines";
import type { LinkFacts } from "../links/model";
import type { CostConventions, PriceLine } from "../model";
import { resolvedLines } from "../resolved-lines";
import type { LevelledLine } from "./levelled-line";
import { levelledScope, type ScopeRow, scopeIndex } from "./scope";

/** A bid as it comes to levelling. */
export type BidToLevel = Readonly<{ id: string; letter: string; prices: readonly PriceLine[]; facts: LinkFacts }>;

/** A bid brought to one scope with the others. */
export type LevelledBid = Readonly<{
  id: string;
  letter: string;
  /** The bid's own lines that count, as the bidder means them: no plug, no link. Shares know their sums. */
  asBid: readonly PriceLine[];
  /** Every line that counts, with the owner's additions. Shares know their sums. */
  lines: readonly LevelledLine[];
  /** What is entered and does not count, with the reason. */
  leftOut: readonly LeftOutLine[];
  scope: readonly ScopeRow[];
  links: readonly LinkRow[];
  notes: readonly string[];
}>;

/**
 * Brings bids to one scope: what counts by its place in the bid, plugs for what is left out, technical links. What a bid
 * itself says is not changed by any of it.
 * @param area of the whole field, in m²
 */
export function levelledBids(
  bids: readonly BidToLevel[],
  costing: Costing,
  { area, conventions }: Readonly<{ area: In<"m²">; conventions: CostConventions }>,
): readonly LevelledBid[] {
  const scoped = bids.map((bid) => ({ ...bid, ...countedLines(bid.prices, conventions) }));
  // a median takes a line as it counts, with the life that it has from another
  const index = scopeIndex(
    costing,
    scoped.map((bid) => ({ ...bid, counted: resolvedLines(bid.counted, area) })),
  );
  return scoped.map((bid) => {
    const { rows, plugs, notes } = levelledScope(bid, costing, index, { area, currency: conventions.currency });
    const own = bid.counted.map((line): LevelledLine => ({ line, origin: { kind: "bid" } }));
    const linked = linkedLines(
      { id: bid.id, lines: [...own, ...plugs], scope: rows, facts: bid.facts },
      costing,
      conventions,
    );
    const resolved = resolvedLines(
      linked.lines.map(({ line }) => line),
      area,
    );
    return {
      id: bid.id,
      letter: bid.letter,
      asBid: resolvedLines(bid.counted, area),
      lines: linked.lines.map(({ origin }, position) => ({ line: resolved[position] as PriceLine, origin })),
      leftOut: [...bid.leftOut, ...linked.leftOut],
      scope: rows,
      links: linked.rows,
      notes,
    };
  });
}
