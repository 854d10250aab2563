import type { Claim } from "#lib/claim";
import type { ExactQuantity, PlainDate } from "#lib/quantity";
import type { SubmittalKind } from "#lib/requirement";
import type { LaboratoryReport } from "./report-checks/model";
import type { ReviewAction } from "./review-actions";

/** A laboratory report that came with a submittal, with the document it is and the clause that asks for it. */
export type SubmittedReport = LaboratoryReport &
  Readonly<{
    id: string;
    document: string;
    page: string;
    /** Id of the requirement it is handed in for; empty where nobody says. */
    clause: string;
  }>;

/** One time that something was handed in: what it states, what the reports show, and the answer where there is one. */
export type SubmittalVersion = Readonly<{
  received: PlainDate;
  reviewer: string;
  action: ReviewAction | null;
  answered: PlainDate | null;
  /** Values as stated: claims like those of a bid, so that the two can be held against each other. */
  values: readonly Claim[];
  reports: readonly SubmittedReport[];
  /** Comments that the reviewer wrote in place of drafted ones, by the key of their row. */
  remarks: Readonly<Record<string, string>>;
}>;

/** A line of the register: what has to be handed in, for which clauses, by when, and what came. Versions in order. */
export type RegisterItem = Readonly<{
  id: string;
  item: string;
  /** The line that the specification asks for and that this is; empty for one that was added by hand. */
  from: string;
  kind: SubmittalKind;
  clauses: readonly string[];
  due: PlainDate | null;
  versions: readonly SubmittalVersion[];
}>;

/** What holds after the award: whose bid was taken and how closely it is followed. */
export type Contract = Readonly<{
  /** Id of the bid that was taken; empty where the procedure names it, or nobody has said. */
  bid: string;
  /** How far a figure may lie from the one promised and still count as the same, as a share of it. */
  sameWithin: ExactQuantity<"fraction">;
  /** Days within which a submittal is to be answered. */
  reviewDays: number;
  /** What was measured on the finished field beside the impact tests, as claims of a day: “new” is the acceptance. */
  measured: readonly Claim[];
}>;
