import type { Quantity } from "#lib/quantity";
import type { Condition } from "./condition";
import type { Edition } from "./edition";
import type { EvidenceLevel } from "./evidence";
import type { StatedMethod } from "./methods";
import type { PropertyId } from "./properties/properties";
import type { ReportDate } from "./report-date";
import type { Accreditation, TestedBuild } from "./report-details";
import type { Spread } from "./spread";
import type { TestedFields } from "./tested-fields";

/** What shows a claim and where it is written. */
export type Provenance = Readonly<{
  evidence: EvidenceLevel;
  /** The document as the bid names it: "Test report 14". Empty where none is named. */
  document: string;
  page: string;
  /** The bid's own words, word for word. */
  words: string;
  /** When the report was made; null where nobody says. */
  date: ReportDate | null;
  /** Who tested. Empty where nobody is named. */
  laboratory: string;
  accreditation: Accreditation;
  build: TestedBuild;
}>;

/** What is claimed. Words also stand for a property that takes a figure where the bid gives none. */
export type ClaimValue = Readonly<
  { kind: "quantity"; quantity: Quantity } | { kind: "choice"; choice: string } | { kind: "words"; words: string }
>;

/** One thing a bid says of one property, exactly as written, with method, condition and evidence. */
export type Claim = Provenance &
  TestedFields &
  Readonly<{
    id: string;
    property: PropertyId;
    value: ClaimValue;
    method: StatedMethod;
    condition: Condition;
    /** What the owner's side remarks; never the bidder's words. */
    note: string;
    /** Of the method, as the report names it. */
    edition: Edition;
    /** How single results scatter by the report; null where it does not say. */
    spread: Spread | null;
  }>;

/** The fields of a claim as forms and files hold them, in the order of a pasted table. */
export const claimFields = [
  "property",
  "figure",
  "method",
  "condition",
  "evidence",
  "document",
  "page",
  "words",
  "note",
  "edition",
  "date",
  "laboratory",
  "accreditation",
  "build",
  "testField",
  "fieldCount",
  "spread",
] as const;

export type ClaimField = (typeof claimFields)[number];
/** A claim as text, before it is read. */
export type ClaimText = Readonly<Record<ClaimField | "id", string>>;
