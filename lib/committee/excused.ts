import type { Sheet, Statement } from "./model";

/** Whether a stated conflict keeps an evaluator from rating a bid. */
export const isExcused = (statement: Statement, bid: string): boolean =>
  statement.kind === "all-bids" || (statement.kind === "some-bids" && statement.bids.includes(bid));

/** A sheet without what was chosen for bids that its evaluator is excused from. */
export const withoutExcused = ({ statement, ratings }: Sheet): Sheet => ({
  statement,
  ratings: ratings.filter(({ bid, level }) => level !== "" && !isExcused(statement, bid)),
});
