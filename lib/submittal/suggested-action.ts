import type { ReviewAction } from "./review-actions";
import type { ValueReview } from "./value-review";

/** The answer that the reviews of a submittal point to. A person decides; this only orders what was found. */
export function suggestedAction(reviews: readonly ValueReview[]): ReviewAction {
  const isShort = reviews.some(({ specification }) => specification.kind === "falls-short");
  if (isShort) return "rejected";
  const isOpen = reviews.some(
    ({ specification, bid }) =>
      ["not-shown", "not-comparable", "not-decided"].includes(specification.kind) || bid.kind === "weaker",
  );
  if (isOpen) return "revise-and-resubmit";
  const isChanged = reviews.some(({ bid }) => ["stronger", "differs", "not-comparable"].includes(bid.kind));
  return isChanged ? "make-corrections-noted" : "no-exceptions-taken";
}
