import type { AskedSubmittal, Requirement } from "../model";
import type { FilledIn } from "./blanks";
import type { Choices } from "./choices";
import type { SectionFacts } from "./section-facts";

/**
 * A paragraph with those below it. `note` is told to the specifier and is no part of the text that is issued; `from` is the
 * id of the requirement that the paragraph states, or empty.
 */
export type Paragraph = Readonly<{ text: string; note: string; from: string; below: readonly Paragraph[] }>;

/** An article. The id stays when articles are added before it, so that versions can be compared. */
export type Article = Readonly<{ id: string; title: string; paragraphs: readonly Paragraph[] }>;

export type Part = Readonly<{ title: string; articles: readonly Article[] }>;

/** A section as a plain tree: three parts and the appendices that procurement needs. */
export type DraftSection = Readonly<{
  number: string;
  title: string;
  parts: readonly Part[];
  appendices: readonly Article[];
}>;

/** All that a section is drafted from. */
export type DraftingInput = Readonly<{
  /** Number of the section. */
  number: string;
  /** Sections in which neighbouring work stands. */
  related: readonly string[];
  facts: SectionFacts;
  requirements: readonly Requirement[];
  submittals: readonly AskedSubmittal[];
  choices: Choices;
  filledIn: FilledIn;
}>;
