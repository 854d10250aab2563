import { type Agreement, agreement, type Criterion } from "#lib/criteria";
import { isExcused } from "./excused";
import type { Committee } from "./model";
import { agreedOn, type CountedRating, levelsOf, ratingsOf } from "./rated-figure";

/** What the sheets say of one bid on one criterion. */
export type BidSpread = Readonly<{
  bid: string;
  ratings: readonly CountedRating[];
  /** Names of evaluators whom a stated conflict excuses from this bid. */
  excused: readonly string[];
  /** Levels between the least and the greatest rating: 0 where all chose one, null where nobody rated. */
  apart: number | null;
  agreed: ReturnType<typeof agreedOn>;
}>;

/** What the sheets say of all bids on one criterion. */
export type CriterionSpread = Readonly<{
  criterion: Criterion;
  bids: readonly BidSpread[];
  agreement: Agreement;
  /** How many evaluators rated every bid; the agreement is measured on their sheets alone. */
  measuredOn: number;
}>;

/** Levels apart from which the committee should hear the reasons first. @source common practice, no source */
export const farApart = 2;

/** Spread and agreement of the opened sheets, criterion by criterion. */
export function spreads(
  committee: Committee,
  criteria: readonly Criterion[],
  bids: readonly string[],
): readonly CriterionSpread[] {
  return criteria
    .filter(({ valueFunction }) => valueFunction.kind === "rating")
    .map((criterion) => {
      const rows = bids.map((bid) => bidSpread(committee, criterion, bid));
      const complete = committee.sheets.flatMap(({ evaluator }) => {
        const scores = rows.flatMap(({ ratings }) =>
          ratings.filter(({ sheet }) => sheet.evaluator.id === evaluator.id).map(({ level }) => level.value),
        );
        return scores.length === bids.length ? [{ evaluator: evaluator.id, scores }] : [];
      });
      return { criterion, bids: rows, agreement: agreement(complete), measuredOn: complete.length };
    });
}

function bidSpread(committee: Committee, criterion: Criterion, bid: string): BidSpread {
  const ratings = ratingsOf(committee, criterion, bid);
  const places = ratings.map(({ level }) => levelsOf(criterion).findIndex(({ id }) => id === level.id));
  return {
    bid,
    ratings,
    excused: committee.sheets
      .filter(({ sheet }) => isExcused(sheet.statement, bid))
      .map(({ evaluator }) => evaluator.name),
    apart: places.length === 0 ? null : Math.max(...places) - Math.min(...places),
    agreed: agreedOn(committee, criterion, bid),
  };
}

/** Pairs of a rated criterion and a bid for which nothing is agreed yet. */
export const notAgreed = (
  committee: Pick<Committee, "agreed">,
  criteria: readonly Criterion[],
  bids: readonly string[],
): readonly Readonly<{ criterion: string; bid: string }>[] =>
  criteria
    .filter(({ valueFunction }) => valueFunction.kind === "rating")
    .flatMap((criterion) =>
      bids
        .filter((bid) => agreedOn(committee, criterion, bid) === null)
        .map((bid) => ({ criterion: criterion.label, bid })),
    );
