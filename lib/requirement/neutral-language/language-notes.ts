import type { LanguageNote } from "./model";
import { languageRules } from "./rules";
import { sentencesOf } from "./sentences";

/** What was read of a text: its notes in the order of the text, and the steps that the rules took. */
export type LanguageReading = Readonly<{ notes: readonly LanguageNote[]; sentences: number; steps: number }>;

/** In the order of the text; of two notes of one family on the same words the wider one stays, or else the first. */
function inOrder(notes: readonly LanguageNote[]): readonly LanguageNote[] {
  const reached = new Map<string, number>();
  return notes
    .toSorted((one, other) => one.start - other.start || other.end - one.end)
    .filter(({ family, end }) => {
      const isNew = end > (reached.get(family) ?? -1);
      if (isNew) reached.set(family, end);
      return isNew;
    });
}

/**
 * Notes on the language of any plain text: the words, why they may favour or shut out a product or a firm, the rule
 * that the concern comes from, and a rewording by performance. A note is a question to the writer and no finding of law.
 * Each sentence costs a bounded number of steps a word, so the whole is linear in the length of the text.
 * @param ownersNames names of makers or products that the owner wants to be told of
 */
export function readLanguage(text: string, ownersNames: readonly string[] = []): LanguageReading {
  const sentences = sentencesOf(text);
  let steps = 0;
  const count = () => {
    steps++;
  };
  const notes = sentences.flatMap((sentence, at) => {
    const around = { next: sentences[at + 1] ?? null, ownersNames, count };
    const found = languageRules.flatMap(({ find, id: rule, ...about }) =>
      find(sentence, around).map(({ first, last, ...own }): LanguageNote => {
        const { start } = sentence.words[first] ?? sentence;
        const { end } = sentence.words[last] ?? sentence;
        const where = {
          start,
          end,
          words: text.slice(start, end),
          sentence: { start: sentence.start, end: sentence.end },
        };
        return { rule, ...about, ...where, ...own };
      }),
    );
    return inOrder(found);
  });
  return { notes, sentences: sentences.length, steps };
}
