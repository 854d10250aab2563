import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";

const sentences = new Intl.Segmenter("en", { granularity: "sentence" });
const words = new Intl.Segmenter("en", { granularity: "word" });

/** The grade up to which a board's paper asks of its readers. */
export const widestGrade = 9;

/**
 * School grade that a text asks of its reader, in years of school in the United States; null where there are no words.
 * It counts long words and long sentences and knows nothing of meaning.
 * @source Flesch–Kincaid grade level (Kincaid, Fishburne, Rogers and Chissom 1975), as computed by flesch-kincaid over syllable
 */
export function readingGrade(paragraphs: readonly string[]): number | null {
  const said = paragraphs.flatMap((paragraph) => [...sentences.segment(paragraph)]).map(({ segment }) => segment);
  const spoken = said.map((sentence) => [...words.segment(sentence)].filter((word) => word.isWordLike));
  const all = spoken.flat().map(({ segment }) => segment);
  if (all.length === 0) return null;
  return fleschKincaid({
    sentence: spoken.filter((sentence) => sentence.length > 0).length,
    word: all.length,
    syllable: all.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
  });
}
