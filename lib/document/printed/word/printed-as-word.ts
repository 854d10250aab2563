import {
  AlignmentType,
  BorderStyle,
  Document,
  Footer,
  Header,
  HeadingLevel,
  Packer,
  PageNumber,
  Paragraph,
  type Table,
  TextRun,
} from "docx";
import type { NumberPlace, PrintedBlock, PrintedDocument } from "../model";
import { printable } from "../runs";
import { coreProperties } from "./core-properties";
import { bulletList, numberingConfig, orderedList } from "./numbering-levels";
import { noteStyle, twips, wordStyles } from "./styles";
import { wordRuns } from "./word-runs";
import { wordTable } from "./word-table";

const headings = { 1: HeadingLevel.HEADING_1, 2: HeadingLevel.HEADING_2, 3: HeadingLevel.HEADING_3 } as const;

const numbering = (number: NumberPlace | undefined) =>
  number === undefined ? {} : { numbering: { reference: number.scheme, level: number.level } };

const noteBorder = { style: BorderStyle.SINGLE, size: 6, space: 6, color: "808080" } as const;

/** `instance` keeps the count of one ordered list from going on in the next. */
function wordBlock(block: PrintedBlock, instance: number): readonly (Paragraph | Table)[] {
  switch (block.kind) {
    case "heading":
      return [
        new Paragraph({
          heading: headings[block.level],
          ...numbering(block.number),
          children: wordRuns(block.text),
        }),
      ];
    case "paragraph":
      return [new Paragraph({ ...numbering(block.number), children: wordRuns(block.text) })];
    case "list":
      return block.items.map(
        (item) =>
          new Paragraph({
            numbering: { reference: block.isOrdered ? orderedList : bulletList, level: 0, instance },
            children: wordRuns(item),
          }),
      );
    case "note":
      return [
        new Paragraph({
          style: noteStyle,
          indent: { left: twips(0.4 * (block.depth + 1)) },
          border: { left: noteBorder },
          children: [new TextRun({ text: `${printable(block.label)}: `, bold: true }), ...wordRuns(block.text)],
        }),
      ];
    case "table":
      return wordTable(block);
    case "page-break":
      return [new Paragraph({ pageBreakBefore: true, spacing: { after: 0, line: 20, lineRule: "exact" } })];
  }
}

const pageLine = (text: string) =>
  new Paragraph({
    alignment: AlignmentType.START,
    tabStops: [{ type: "right", position: twips(6.5) }],
    children: [
      new TextRun({ text: printable(text), size: 17 }),
      new TextRun({ size: 17, children: ["\tPage ", PageNumber.CURRENT, " of ", PageNumber.TOTAL_PAGES] }),
    ],
  });

/**
 * A document as a DOCX file: named styles, headings that can be navigated, numbers that the word processor counts
 * itself, tables with a row of headings, and a language.
 */
export async function printedAsWord(printed: PrintedDocument): Promise<Uint8Array<ArrayBuffer>> {
  const { title, subtitle, author, language, header, footer, blocks } = printed;
  const document = new Document({
    title: printable(title),
    creator: printable(author),
    styles: wordStyles(language),
    numbering: { config: numberingConfig },
    sections: [
      {
        properties: { page: { size: { width: twips(8.5), height: twips(11) }, margin: pageMargins } },
        headers: {
          default: new Header({
            children: [new Paragraph({ children: [new TextRun({ text: printable(header), size: 17 })] })],
          }),
        },
        footers: { default: new Footer({ children: [pageLine(footer)] }) },
        children: [
          new Paragraph({ heading: HeadingLevel.TITLE, children: wordRuns(title) }),
          ...(subtitle === "" ? [] : [new Paragraph({ spacing: { after: 240 }, children: wordRuns(subtitle) })]),
          ...blocks.flatMap(wordBlock),
        ],
      },
    ],
  });
  const bytes = await Packer.pack(document, "uint8array", undefined, [
    { path: "docProps/core.xml", data: coreProperties(printed) },
  ]);
  return Uint8Array.from(bytes);
}

const pageMargins = { top: twips(1), bottom: twips(1), left: twips(1), right: twips(1) };
