import { type Procedure, procedureSentences } from "#lib/procedure";
import { type PaperPart, paperParts } from "#lib/recommendation";
import type { PrintedBlock, PrintedDocument } from "../printed/model";
import { procedureBlocks } from "../procedure-blocks";
import type { BoardPaper } from "./board-paper";
import { partBlocks } from "./part-blocks";

/** Whose paper it is, on which day it was made, as 2026-11-25, how far the procedure has come, and since when the record holds it. */
export type PaperFacts = Readonly<{
  project: string;
  owner: string;
  notice: string;
  date: string;
  procedure: Procedure;
  keptSince: string;
}>;

const ownerNote = (words: string): PrintedBlock => ({
  kind: "note",
  label: "In the owner’s words",
  text: words,
  depth: 0,
});

function written(paper: BoardPaper, part: PaperPart, generated: readonly PrintedBlock[]): readonly PrintedBlock[] {
  const { showsGenerated, words, readThen } = paper.parts[part].written;
  return [
    ...(showsGenerated ? generated : []),
    ...words.map(ownerNote),
    ...(readThen === null
      ? []
      : [
          {
            kind: "note",
            label: "The figures have moved",
            text: "The words above were written beside other figures than those of today.",
            depth: 0,
          } as const,
        ]),
  ];
}

/** What the figures support, as the heading of the paper; the owner's own words stand below a neutral one. */
function supportBlocks(paper: BoardPaper): readonly PrintedBlock[] {
  const { headline, sentences } = paper.text.support;
  const isOwn = !paper.parts.support.written.showsGenerated;
  const generated: readonly PrintedBlock[] =
    sentences.length === 0 ? [] : [{ kind: "paragraph", text: sentences.join(" ") }];
  return [
    { kind: "heading", level: 1, text: isOwn ? paper.parts.support.heading : headline },
    ...written(paper, "support", generated),
  ];
}

function sectionOf(paper: BoardPaper, part: PaperPart): readonly PrintedBlock[] {
  if (part === "support") return [...supportBlocks(paper), ...cautionBlocks(paper)];
  const blocks = written(paper, part, partBlocks(part, paper.text));
  return blocks.length === 0 ? [] : [{ kind: "heading", level: 2, text: paper.parts[part].heading }, ...blocks];
}

/** Cautions are never the owner's to take out. */
const cautionBlocks = ({ text }: BoardPaper): readonly PrintedBlock[] =>
  text.cautions.map((caution) => ({ kind: "note", label: "Caution", text: caution, depth: 0 }));

const dissentBlocks = ({ dissents }: BoardPaper): readonly PrintedBlock[] =>
  dissents.length === 0
    ? []
    : [
        { kind: "heading", level: 2, text: "Views that differ" },
        {
          kind: "list",
          isOrdered: false,
          items: dissents.map(({ name, words }) => [
            { text: `${name}. `, style: "strong" },
            { text: words, style: "plain" },
          ]),
        },
      ];

/** The board's paper to print: two pages, and behind them what to ask each bidder. */
export function printedPaper(
  paper: BoardPaper,
  { project, owner, notice, date, procedure, keptSince }: PaperFacts,
): PrintedDocument {
  const before = paperParts.filter((part) => part !== "asking").flatMap((part) => sectionOf(paper, part));
  const asking = sectionOf(paper, "asking");
  return {
    title: `Recommendation: ${project}`,
    subtitle: notice === "" ? owner : `${owner} · ${notice}`,
    author: owner,
    language: "en-US",
    date,
    header: project,
    footer: "Generated from the evaluation, but for what stands under “In the owner’s words”.",
    blocks: [
      ...before,
      ...procedureBlocks(procedureSentences(procedure, keptSince)),
      ...dissentBlocks(paper),
      ...(asking.length === 0 ? [] : [{ kind: "page-break" } as const, ...asking]),
    ],
  };
}
