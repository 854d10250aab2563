import type { Claim } from "#lib/claim";
import type { ExactQuantity, PlainDate } from "#lib/quantity";
import type { SubmittalKind } from "#lib/requirement";
import type { WeighTicket } from "./delivered-infill";
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

/** How a length that is measured again and again has to be: so much, give or take. In m. */
export type WantedLength = Readonly<{ wanted: ExactQuantity<"length">; tolerance: ExactQuantity<"length"> }>;

/** One place where a seam, a line or the base was looked at. */
export type PlacedReading = Readonly<{ id: string; where: string; reading: ExactQuantity<"length">; note: string }>;

/** What is recorded of how the work was placed. Gap of seams, width of lines, gap of the base under the straightedge. */
export const placedKinds = {
  seams: { label: "Seams", reading: "Gap", ideal: "closed" },
  lines: { label: "Lines", reading: "Width", ideal: "as drawn" },
  planarity: { label: "Planarity of the base", reading: "Gap under the straightedge", ideal: "even" },
} as const;

export type PlacedKind = keyof typeof placedKinds;

/** What was delivered and how it was placed. */
export type Delivery = Readonly<{
  tickets: readonly WeighTicket[];
  /** Mass that was left over and taken away again, by component. */
  leftOver: readonly Readonly<{ component: string; mass: ExactQuantity<"mass"> }>[];
  /** Share of the mass wanted by which what lies there may differ. */
  massTolerance: ExactQuantity<"fraction">;
  /** The most water that a load may hold where nobody measured it, as a share of its wet mass. */
  mostMoisture: ExactQuantity<"fraction">;
  /** Depth of the placed infill; null where nobody says what is wanted. */
  depthWanted: ExactQuantity<"length"> | null;
  /** How far the average of the field may lie from it, and a single place. */
  averageTolerance: ExactQuantity<"length">;
  placeTolerance: ExactQuantity<"length">;
  depths: readonly ExactQuantity<"length">[];
  /** Length of the straightedge, as it is named in the clause. */
  straightedge: string;
  placed: Readonly<Record<PlacedKind, WantedLength & Readonly<{ readings: readonly PlacedReading[] }>>>;
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
