import type { LegalBasis } from "./legal-basis";
import type { Sentence } from "./sentences";

/** Kinds of wording that may favour or shut out a product or a firm. */
export const concernFamilies = {
  ownership: "Marks of ownership",
  exclusive: "Exclusive or proprietary",
  "sales-words": "Superlatives and sales words",
  "named-source": "Named source without “or equal”",
  "owners-names": "Names on the owner’s own list",
  "copied-precision": "Values that point to one product",
  "single-laboratory": "Tests of one laboratory",
  "shuts-out": "Experience, warranty or substitution terms that shut others out",
  "local-preference": "Local preference",
} as const;

export type ConcernFamily = keyof typeof concernFamilies;

/** How much a wording may cost competition: it shuts others out by itself, it needs a stated reason, or it adds nothing. */
export type ConcernSeverity = "may shut others out" | "needs a reason" | "says nothing that can be tested";

/** What a rule found, as words of a sentence: from the first to the last, both included. */
export type Match = Readonly<{ first: number; last: number }>;

/** What a rule found with words of its own for this place, where it has any. */
export type Found = Match & Readonly<{ concern?: string; offered?: string }>;

/** The rest of the text as far as a rule may look: the sentence that follows, null at the end. */
export type Surroundings = Readonly<{ next: Sentence | null; ownersNames: readonly string[]; count: () => void }>;

/** One rule: what it looks for, why that is a concern, what it rests on and what to write instead. */
export type LanguageRule = Readonly<{
  id: string;
  family: ConcernFamily;
  severity: ConcernSeverity;
  concern: string;
  basis: readonly LegalBasis[];
  /** A rewording by performance; offered and never put in by itself. */
  offered: string;
  find: (sentence: Sentence, around: Surroundings) => readonly Found[];
}>;

/** One note on a text. Offsets are those of the text as handed in, so that a page can mark the words. */
export type LanguageNote = Readonly<{
  rule: string;
  family: ConcernFamily;
  severity: ConcernSeverity;
  start: number;
  end: number;
  words: string;
  sentence: Readonly<{ start: number; end: number }>;
  concern: string;
  basis: readonly LegalBasis[];
  offered: string;
}>;
