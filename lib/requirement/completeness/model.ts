import type { AskedSubmittal, Requirement } from "../model";

/** What the notes look at. `announced` holds the ids of criteria that the text names with what they count. */
export type WrittenSection = Readonly<{
  requirements: readonly Requirement[];
  submittals: readonly AskedSubmittal[];
  announced: readonly string[];
}>;

/** What one kind of note says of one place. */
export type Gap = Readonly<{ requirements: readonly string[]; submittal?: string; sentence: string }>;

/** One kind of note on what the text leaves out or says twice. */
export type CompletenessRule = Readonly<{
  id: string;
  title: string;
  /** What to do about it. */
  advice: string;
  find: (section: WrittenSection) => readonly Gap[];
}>;

/** A note on the completeness of the text. */
export type CompletenessNote = Gap & Readonly<{ rule: string; title: string; advice: string }>;
