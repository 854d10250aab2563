import type { AskedSubmittal, Requirement } from "../model";
import type { Choices } from "./choices";

/** A paragraph with those below it. `note` is told to the specifier and is no part of the text that is issued. */
export type Paragraph = Readonly<{ text: string; note: string; below: readonly Paragraph[] }>;

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

/** Facts of the brief as people read them; an empty one is a blank of the text. */
export type SectionFacts = Readonly<{
  project: string;
  owner: string;
  /** Size and use: “380 by 212 ft, 80,560 ft²”. */
  field: string;
  hoursOfUse: string;
  climate: string;
  studyPeriod: string;
  discountRate: string;
  baseDate: string;
  costTiming: string;
  testPoints: string;
}>;

/** All that a section is drafted from. */
export type DraftingInput = Readonly<{
  facts: SectionFacts;
  requirements: readonly Requirement[];
  submittals: readonly AskedSubmittal[];
  choices: Choices;
  /** What the owner has filled in, by what the blank asks for. */
  filledIn: Readonly<Record<string, string>>;
}>;
