import type { PartWords } from "./model";

/** One part as it stands on paper: the generated text, the owner's words, and whether the figures moved under them. */
export type WrittenPart = Readonly<{
  showsGenerated: boolean;
  /** The owner's words by paragraph; empty where there are none. */
  words: readonly string[];
  /** The generated text that the words were written beside, where it reads otherwise now. */
  readThen: string | null;
}>;

const paragraphs = (words: string): readonly string[] =>
  words
    .split(/\n\s*\n|\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "");

/** @param generated the generated text of the part as it reads now, in the same units and names as when it was kept */
export function writtenPart(part: PartWords, generated: string): WrittenPart {
  if (part.kind === "generated") return { showsGenerated: true, words: [], readThen: null };
  const hasMoved = part.beside !== "" && part.beside !== generated;
  return {
    showsGenerated: part.kind === "added",
    words: paragraphs(part.words),
    readThen: hasMoved ? part.beside : null,
  };
}
