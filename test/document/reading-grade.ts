/** Sounds of a word by its groups of vowels; a silent e at the end is none. A rule of thumb, good to about one in ten. */
function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, "");
  const groups = letters.replace(/(?:[^laeiouy]es|ed|[^laeiouy]e)$/, "").match(/[aeiouy]{1,2}/g);
  return Math.max(1, groups?.length ?? 0);
}

/**
 * School grade that a text asks of its reader.
 * @source Flesch–Kincaid grade level: Kincaid, Fishburne, Rogers and Chissom 1975, from memory
 */
export function readingGrade(sentences: readonly string[]): number {
  const words = sentences.flatMap((sentence) => sentence.split(/\s+/)).filter((word) => /[a-z0-9]/i.test(word));
  const ends = sentences.join(" ").match(/[.!?](?:\s|$)/g)?.length ?? 1;
  const sounds = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / ends) + 11.8 * (sounds / words.length) - 15.59;
}
