import type { PlainDate } from "#lib/quantity";
import type { SubmittalKind } from "#lib/requirement";
import type { ReviewAction } from "./review-actions";

/** One time that something was handed in, with the answer where there is one. */
export type SubmittalVersion = Readonly<{
  received: PlainDate;
  reviewer: string;
  action: ReviewAction | null;
  answered: PlainDate | null;
}>;

/** A line of the register: what has to be handed in, for which clauses, by when, and what came. Versions in order. */
export type RegisterItem = Readonly<{
  id: string;
  item: string;
  kind: SubmittalKind;
  clauses: readonly string[];
  due: PlainDate | null;
  versions: readonly SubmittalVersion[];
}>;
