import { type ArticleChange, comparedSections, type Issue, issueName, type ParagraphChange } from "#lib/requirement";
import { dateInWords } from "../conventions-in-words";
import type { PrintedBlock, PrintedDocument, PrintedText } from "../printed/model";
import { procedureBlocks } from "../procedure-blocks";
import { type SectionFrame, sectionTitle } from "./printed-section";

const articleWords = { added: "is new", removed: "is taken out", changed: "is changed" } as const;

/** What became of a paragraph, told so that it can be followed with the earlier text at hand. */
function changeText(change: ParagraphChange): PrintedText {
  const { at } = change;
  switch (change.kind) {
    case "added":
      return [
        { text: `Paragraph ${at}, new: `, style: "plain" },
        { text: change.text, style: "added" },
      ];
    case "removed":
      return [
        { text: `Paragraph ${at}, taken out: `, style: "plain" },
        { text: change.text, style: "removed" },
      ];
    case "changed":
      return [
        { text: `Paragraph ${at}, changed: `, style: "plain" },
        ...change.words.map(({ kind, text }) => ({ text, style: kind === "kept" ? ("plain" as const) : kind })),
      ];
  }
}

const changeBlocks = ({ kind, heading, changes }: ArticleChange): readonly PrintedBlock[] => [
  { kind: "heading", level: 2, text: `${heading} ${articleWords[kind]}` },
  { kind: "list", isOrdered: false, items: changes.map(changeText) },
];

/** An addendum as a document of its own: why it was made, and every change against the issue before it. */
export function printedAddendum(before: Issue, issue: Issue, frame: SectionFrame): PrintedDocument {
  const changes = comparedSections(before.section, issue.section);
  const name = issueName(issue);
  return {
    title: `${name} to ${sectionTitle(issue.section)}`,
    subtitle: [`${frame.project}, ${frame.owner}.`, `${dateInWords(issue.date)}.`, frame.notice]
      .filter((line) => line !== "")
      .join(" "),
    author: frame.owner,
    language: "en-US",
    date: issue.date,
    header: `${frame.project} · ${name} to Section ${issue.section.number}`,
    footer: frame.stand,
    blocks: [
      { kind: "paragraph", text: `Reason: ${issue.reason}` },
      {
        kind: "paragraph",
        text: `This addendum changes the section as given out on ${dateInWords(before.date)} (${issueName(before)}). Where both differ, this addendum holds. Places are those of the new text, and of the old one where a paragraph is taken out. Words put in are underlined, words taken out are struck through; in plain text they stand in {+ +} and [- -].`,
      },
      ...(changes.length === 0
        ? [{ kind: "paragraph", text: "No word of the section changes." } as const]
        : changes.flatMap(changeBlocks)),
      ...procedureBlocks(frame.procedure),
    ],
  };
}
