import type { NumberedArticle, NumberedParagraph, NumberedSection } from "#lib/requirement";
import type { PrintedBlock, PrintedDocument, Run } from "../printed/model";
import type { NumberingSchemeId } from "../printed/numbering-schemes";
import { procedureBlocks } from "../procedure-blocks";

/** Whether notes to the specifier are printed; what is given out has none. */
export type SectionNotes = "with notes to the specifier" | "without notes";

/** What stands on a printed section beside its text. `stand` says which version it is: “Draft of November 25, 2026”. */
export type SectionFrame = Readonly<{
  owner: string;
  project: string;
  /** A line that stands on every page, such as that all is invented; may be empty. */
  notice: string;
  stand: string;
  date: string;
  /** Stage and amendments in sentences; none in a text that was given out and stays as it was. */
  procedure: readonly string[];
}>;

/** Blanks in a text stand out, so that nobody overlooks one. */
function withBlanks(text: string): readonly Run[] {
  return text
    .split(/(\[… to be filled in: [^\]]*\])/)
    .map((part) => ({ text: part, style: part.startsWith("[… to be filled in") ? "strong" : "plain" }));
}

function paragraphBlocks(
  { level, text, note }: NumberedParagraph,
  scheme: NumberingSchemeId,
  first: number,
  notes: SectionNotes,
): readonly PrintedBlock[] {
  const paragraph: PrintedBlock = {
    kind: "paragraph",
    text: withBlanks(text),
    number: { scheme, level: first + level },
  };
  if (note === "" || notes === "without notes") return [paragraph];
  return [{ kind: "note", label: "Note to the specifier", text: note, depth: level }, paragraph];
}

const bodyOf = ({ paragraphs }: NumberedArticle, scheme: NumberingSchemeId, first: number, notes: SectionNotes) =>
  paragraphs.flatMap((paragraph) => paragraphBlocks(paragraph, scheme, first, notes));

/** “SYNTHETIC GRASS SURFACING” → “Synthetic grass surfacing”, for running text. */
const quietly = (title: string) => title.charAt(0) + title.slice(1).toLowerCase();

export const sectionTitle = ({ number, title }: NumberedSection): string => `Section ${number}, ${quietly(title)}`;

/** The section as a document: parts and articles as headings, paragraphs with the numbers of the section format. */
export function printedSection(section: NumberedSection, frame: SectionFrame, notes: SectionNotes): PrintedDocument {
  const heading = (level: 1 | 2, text: string, scheme: NumberingSchemeId, at: number): PrintedBlock => ({
    ...({ kind: "heading", level, text } as const),
    number: { scheme, level: at },
  });
  return {
    title: sectionTitle(section),
    subtitle: [`${frame.project}, ${frame.owner}.`, `${frame.stand}.`, frame.notice]
      .filter((line) => line !== "")
      .join(" "),
    author: frame.owner,
    language: "en-US",
    date: frame.date,
    header: `${frame.project} · Section ${section.number}`,
    footer: frame.stand,
    blocks: [
      ...section.parts.flatMap(({ title, articles }) => [
        heading(1, title, "section", 0),
        ...articles.flatMap((article) => [
          heading(2, article.title, "section", 1),
          ...bodyOf(article, "section", 2, notes),
        ]),
      ]),
      { kind: "paragraph", text: [{ text: `END OF SECTION ${section.number}`, style: "strong" }] },
      ...section.appendices.flatMap((article) => [
        heading(1, article.title, "appendix", 0),
        ...bodyOf(article, "appendix", 1, notes),
      ]),
      ...procedureBlocks(frame.procedure),
    ],
  };
}
