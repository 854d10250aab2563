import type { Article, DraftSection, Paragraph } from "./model";

/** A paragraph with its number: “A.”, “1.”, “a.”, “1)”. Level 0 is the paragraph right below an article. */
export type NumberedParagraph = Readonly<{
  level: number;
  number: string;
  text: string;
  note: string;
  /** The requirement that the paragraph states; empty where it states none. */
  from: string;
}>;

/** An article with its number, “1.1” in a part or “Appendix A”, and its paragraphs in reading order. */
export type NumberedArticle = Readonly<{
  id: string;
  number: string;
  title: string;
  paragraphs: readonly NumberedParagraph[];
}>;

/** The section with every number written out and every reference resolved. */
export type NumberedSection = Readonly<{
  number: string;
  title: string;
  parts: readonly Readonly<{ number: string; title: string; articles: readonly NumberedArticle[] }>[];
  appendices: readonly NumberedArticle[];
}>;

/** 0 → A, 25 → Z, 26 → AA, 27 → BB: as word processors count in letters. */
const letter = (index: number): string => String.fromCharCode(65 + (index % 26)).repeat(Math.floor(index / 26) + 1);

const numbers: readonly ((index: number) => string)[] = [
  (index) => `${letter(index)}.`,
  (index) => `${index + 1}.`,
  (index) => `${letter(index).toLowerCase()}.`,
  (index) => `${index + 1})`,
];

/** “@warranty” in a text is the number of that article. */
const reference = /@([a-z]+(?:-[a-z]+)*)/g;

function numberedParagraphs(
  all: readonly Paragraph[],
  level: number,
  resolved: (text: string) => string,
): NumberedParagraph[] {
  const numberAt = numbers[Math.min(level, numbers.length - 1)];
  return all.flatMap(({ text, note, from, below }, index) => [
    { level, number: numberAt?.(index) ?? "", text: resolved(text), note: resolved(note), from },
    ...numberedParagraphs(below, level + 1, resolved),
  ]);
}

/** Numbers the tree. @throws RangeError if a text refers to an article that is not there: the drafting is at fault */
export function numberedSection({ number, title, parts, appendices }: DraftSection): NumberedSection {
  const places = new Map<string, string>([
    ...parts.flatMap(({ articles }, part) =>
      articles.map(({ id }, index) => [id, `Article ${part + 1}.${index + 1}`] as const),
    ),
    ...appendices.map(({ id }, index) => [id, `Appendix ${letter(index)}`] as const),
  ]);
  const resolved = (text: string) =>
    text.replace(reference, (_, id: string) => {
      const place = places.get(id);
      if (place === undefined) throw new RangeError(`no article ${id}`);
      return place;
    });
  const numbered = ({ id, title: heading, paragraphs }: Article): NumberedArticle => ({
    id,
    number: (places.get(id) ?? "").replace("Article ", ""),
    title: heading,
    paragraphs: numberedParagraphs(paragraphs, 0, resolved),
  });
  return {
    number,
    title,
    parts: parts.map((part, index) => ({
      number: `PART ${index + 1}`,
      title: part.title,
      articles: part.articles.map(numbered),
    })),
    appendices: appendices.map(numbered),
  };
}

/** Everything in the text that is still to be filled in, each once, in reading order. */
export function blanksOf(section: NumberedSection): readonly string[] {
  const texts = [...section.parts.flatMap(({ articles }) => articles), ...section.appendices].flatMap(
    ({ paragraphs }) => paragraphs.map(({ text }) => text),
  );
  return [
    ...new Set(
      texts.flatMap((text) => [...text.matchAll(/\[… to be filled in: ([^\]]*)\]/g)].map(([, asked = ""]) => asked)),
    ),
  ];
}
