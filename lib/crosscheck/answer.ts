import type { ClaimField } from "#lib/claim";
import type { PlainDate } from "#lib/quantity";
import type { Finding } from "./model";

/** A claim before an answer changed it, as text by field. The claim of that id holds what stands now. */
export type EarlierClaim = Readonly<{ claim: string; fields: Readonly<Partial<Record<ClaimField, string>>> }>;

/** What a bidder answered about a finding. */
export type Answer = Readonly<{
  id: string;
  /** The key of the finding that was asked about; the finding itself may be gone through the answer. */
  finding: string;
  asked: string;
  answer: string;
  received: PlainDate | null;
  outcome: "settled" | "still open";
  amended: readonly EarlierClaim[];
}>;

/** The answers to a finding, in the order in which they were recorded. */
export const answersTo = ({ key }: Pick<Finding, "key">, answers: readonly Answer[]): readonly Answer[] =>
  answers.filter(({ finding }) => finding === key);

/** Whether the last answer to a finding settles it. */
export const isSettled = (finding: Pick<Finding, "key">, answers: readonly Answer[]): boolean =>
  answersTo(finding, answers).at(-1)?.outcome === "settled";

/** What a claim said before, the earliest first. */
export const earlierVersions = (claim: string, answers: readonly Answer[]): readonly EarlierClaim[] =>
  answers.flatMap(({ amended }) => amended.filter((earlier) => earlier.claim === claim));
