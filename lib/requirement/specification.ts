import type { Quantity } from "#lib/quantity";
import type { FilledIn } from "./drafting/blanks";
import type { Choices } from "./drafting/choices";

/** Where a system is known from that is no bid of this project. */
export const systemOrigins = {
  "earlier-bid": "An earlier bid",
  "public-data": "Public data",
} as const;

export type SystemOrigin = keyof typeof systemOrigins;

/** A system that the owner knows of, told apart by a neutral label. Figures are by measure, answers by clause. */
export type OtherSystem = Readonly<{
  id: string;
  label: string;
  origin: SystemOrigin;
  source: string;
  figures: readonly Readonly<{ measure: string; figure: Quantity }>[];
  answers: readonly Readonly<{ clause: string; meets: boolean }>[];
}>;

/** What the owner decides about the section beyond its clauses. */
export type Specification = Readonly<{
  /** Number of the section in the project's numbering. */
  number: string;
  /** Sections in which neighbouring work stands, each as it is to be read. */
  related: readonly string[];
  choices: Choices;
  filledIn: FilledIn;
  /** Makers, products and persons that the text must not name. */
  names: readonly string[];
  systems: readonly OtherSystem[];
  /** Whether bids do what clauses in words ask, as far as the owner has said so. */
  bidAnswers: readonly Readonly<{ bid: string; clause: string; meets: boolean }>[];
}>;

/** @source number of the section: from memory; numbers and titles of the others as read in filed sections */
export const startingSpecification: Specification = {
  number: "32 18 13",
  related: [
    "Section 01 25 00, substitution procedures",
    "Section 01 33 00, submittal procedures",
    "Section 01 40 00, quality requirements",
    "Section 01 77 00, closeout procedures, and Section 01 78 00, closeout submittals",
    "Section 31 20 00, earth moving",
    "Section 32 11 00, base courses",
    "Section 33 40 00, drainage",
  ],
  choices: {},
  filledIn: {},
  names: [],
  systems: [],
  bidAnswers: [],
};
