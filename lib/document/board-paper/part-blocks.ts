import type { PaperPart } from "#lib/recommendation";
import type { PrintedBlock, PrintedText } from "../printed/model";
import { plainOf } from "../printed/runs";
import type { Recommendation } from "./recommendation";

/** What each part of the paper is headed; the first carries what the figures support as its heading. */
export const partHeadings = {
  support: "What the figures support",
  question: "The question",
  bids: "The bids",
  gates: "The gates",
  deciding: "The figures that weigh most",
  firmness: "How firm this is",
  unknown: "What is not known",
  counting: "How the figures are counted",
  asking: "What to ask before signing",
} as const satisfies Readonly<Record<PaperPart, string>>;

const paragraph = (sentences: readonly string[]): readonly PrintedBlock[] =>
  sentences.length === 0 ? [] : [{ kind: "paragraph", text: sentences.join(" ") }];

const lettered = (letter: string, line: string): PrintedText => [
  { text: `Bid ${letter}. `, style: "strong" },
  { text: line, style: "plain" },
];

const list = (items: readonly PrintedText[]): readonly PrintedBlock[] =>
  items.length === 0 ? [] : [{ kind: "list", isOrdered: false, items }];

function decidingTable({ deciding, bids }: Recommendation): readonly PrintedBlock[] {
  if (deciding.length === 0) return [];
  return [
    {
      kind: "table",
      caption: "The figures of all bids on the criteria of most weight",
      columns: [
        { heading: "What counts", share: 1.5, align: "start" },
        { heading: "Why", share: 2.2, align: "start" },
        ...bids.map(({ letter }) => ({ heading: `Bid ${letter}`, share: 1.2, align: "start" as const })),
      ],
      rows: deciding.map(({ label, reason, bids: figures }) => [label, reason, ...figures.map(({ text }) => text)]),
      hasRowHeads: true,
    },
  ];
}

/** The generated content of a part, without its heading; none where there is nothing to say. */
export function partBlocks(part: PaperPart, text: Recommendation): readonly PrintedBlock[] {
  switch (part) {
    case "support":
      return paragraph([text.support.headline, ...text.support.sentences]);
    case "question":
      return paragraph(text.question);
    case "bids":
      return list(text.bids.map(({ letter, line }) => lettered(letter, line)));
    case "gates":
      return paragraph(text.gates);
    case "deciding":
      return decidingTable(text);
    case "firmness":
      return paragraph(text.firmness);
    case "unknown":
      return text.notKnown.length === 0
        ? paragraph(["Every figure that counts is shown with the proof asked for."])
        : list(text.notKnown.map(({ letter, line }) => lettered(letter, line)));
    case "counting":
      return paragraph([text.conventions]);
    case "asking":
      return text.ask.flatMap(({ letter, questions }) => [
        { kind: "heading", level: 3, text: `Bid ${letter}` },
        ...list(questions),
      ]);
  }
}

function linesOf(block: PrintedBlock): readonly string[] {
  switch (block.kind) {
    case "heading":
      return [block.text];
    case "paragraph":
    case "note":
      return [plainOf(block.text)];
    case "list":
      return block.items.map(plainOf);
    case "table":
      return block.rows.map((row) => row.map(plainOf).join(" | "));
    case "page-break":
      return [];
  }
}

/** The generated content of a part as lines of plain text. */
export const partLines = (part: PaperPart, text: Recommendation): readonly string[] =>
  partBlocks(part, text).flatMap(linesOf);
