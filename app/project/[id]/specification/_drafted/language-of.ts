import { type LanguageNote, type NumberedArticle, type NumberedSection, readLanguage } from "#lib/requirement";

/** A language note on a section, with the article that holds the words and the requirement that they come from, if any. */
export type SectionLanguageNote = Readonly<{
  note: LanguageNote;
  sentence: string;
  article: string;
  place: string;
  from: string;
}>;

/** Every paragraph in reading order with its place and the requirement whose words it holds. */
function paragraphsOf({ number, title, id, paragraphs }: NumberedArticle) {
  let [from, fromLevel] = ["", 0];
  return paragraphs.map((paragraph) => {
    if (from !== "" && paragraph.level <= fromLevel) from = "";
    if (paragraph.from !== "") [from, fromLevel] = [paragraph.from, paragraph.level];
    return { text: paragraph.text, article: id, place: `${number} ${title}`, from };
  });
}

/** Notes on the words of a section. It is read as one text, since “or equal” may stand a sentence later. */
export function languageOf(
  { parts, appendices }: NumberedSection,
  names: readonly string[],
): readonly SectionLanguageNote[] {
  const paragraphs = [...parts.flatMap(({ articles }) => articles), ...appendices].flatMap(paragraphsOf);
  const ends: number[] = [];
  let end = 0;
  for (const { text } of paragraphs) {
    end += text.length + 1;
    ends.push(end);
  }
  const whole = paragraphs.map(({ text }) => text).join("\n");
  const { notes } = readLanguage(whole, names);
  return notes.flatMap((note) => {
    const paragraph = paragraphs[ends.findIndex((after) => note.start < after)];
    if (paragraph === undefined) return [];
    const { article, place, from } = paragraph;
    const sentence = whole.slice(note.sentence.start, note.sentence.end);
    return [{ note, sentence, article, place, from }];
  });
}
