import type { PlainDate } from "#lib/quantity";
import type { NumberedSection } from "./drafting/numbered-section";

/**
 * A section as it was given out: the text, and the criteria and clauses it was drawn up from as they stood. Issue 0 is the
 * first, each later one an addendum.
 */
export type Issue = Readonly<{
  sequence: number;
  date: PlainDate;
  /** Why an addendum was made; empty for the first issue. */
  reason: string;
  section: NumberedSection;
  /** The section as plain text, to the last line end. */
  text: string;
  /** Requirements and specification documents as they were typed, JSON values. */
  requirements: unknown;
  specification: unknown;
  /** SHA-256 of the text in UTF-8, and of requirements and specification in canonical JSON (RFC 8785). */
  seals: Readonly<{ text: string; basis: string }>;
}>;

/** “Issue for bids” or “Addendum 2”. */
export const issueName = ({ sequence }: Pick<Issue, "sequence">): string =>
  sequence === 0 ? "Issue for bids" : `Addendum ${sequence}`;

/** Id of the document in which an issue is kept: there is one of each number. */
export const issueId = (sequence: number): string => `issue-${sequence}`;
