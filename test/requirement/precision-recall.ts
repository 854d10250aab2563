import { readLanguage } from "#lib/requirement";

/** How often a note is right and how many concerns are noted, over pairs of sentence and family. */
export function precisionAndRecall(sentences: readonly (readonly [string, ...string[]])[]) {
  const misses: string[] = [];
  let [right, told, wanted] = [0, 0, 0];
  for (const [text, ...families] of sentences) {
    const found = new Set<string>(readLanguage(text).notes.map(({ family }) => family));
    right += families.filter((family) => found.has(family)).length;
    told += found.size;
    wanted += families.length;
    for (const family of families) if (!found.has(family)) misses.push(`not noted, ${family}: ${text}`);
    for (const family of found) if (!families.includes(family)) misses.push(`noted amiss, ${family}: ${text}`);
  }
  return { sentences: sentences.length, precision: right / told, recall: right / wanted, misses };
}
