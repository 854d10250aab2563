import { AlignmentType, Paragraph, Table, TableCell, TableLayoutType, TableRow, WidthType } from "docx";
import type { PrintedColumn, PrintedTable, PrintedText } from "../model";
import { printable } from "../runs";
import { twips } from "./styles";
import { wordRuns } from "./word-runs";

/** Inches between the margins of a letter page. */
const textWidth = 6.5;

const alignment = { start: AlignmentType.START, end: AlignmentType.END } as const;

const cell = (column: PrintedColumn, text: PrintedText, width: number, isHead: boolean) =>
  new TableCell({
    width: { size: width, type: WidthType.DXA },
    children: [
      new Paragraph({
        alignment: alignment[column.align],
        spacing: { before: 30, after: 30 },
        children: isHead
          ? wordRuns([
              { text: typeof text === "string" ? text : text.map((run) => run.text).join(""), style: "strong" },
            ])
          : wordRuns(text),
      }),
    ],
  });

/** Caption and table. The row of headings is marked as such, so that it is read out and repeated on each page. */
export function wordTable({ caption, columns, rows, hasRowHeads }: PrintedTable): readonly (Paragraph | Table)[] {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => twips((textWidth * share) / whole));
  const row = (cells: readonly PrintedText[], isHead: boolean) =>
    new TableRow({
      ...(isHead ? { tableHeader: true } : {}),
      cantSplit: true,
      children: columns.map((column, index) =>
        cell(column, cells[index] ?? "", widths[index] ?? 0, isHead || (hasRowHeads && index === 0)),
      ),
    });
  return [
    new Paragraph({ style: "Caption", text: printable(caption) }),
    new Table({
      width: { size: twips(textWidth), type: WidthType.DXA },
      columnWidths: widths,
      layout: TableLayoutType.FIXED,
      tableLook: { firstRow: true, firstColumn: hasRowHeads, noHBand: true, noVBand: true },
      margins: { left: 80, right: 80 },
      rows: [
        row(
          columns.map(({ heading }) => heading),
          true,
        ),
        ...rows.map((cells) => row(cells, false)),
      ],
    }),
    new Paragraph({ text: "" }),
  ];
}
