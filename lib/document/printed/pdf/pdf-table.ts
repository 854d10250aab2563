import type { PrintedTable, PrintedText } from "../model";
import { type Line, linesOf, type Measuring } from "./lines";
import {
  drawLine,
  type Element,
  keepRoom,
  leading,
  marked,
  newPage,
  page,
  roomOn,
  type Sheet,
  textWidth,
  wholePage,
} from "./sheet";

const size = 9;
const padding = 3;
const lineHeight = size * leading;

type Cell = Readonly<{ x: number; width: number; align: "start" | "end"; lines: readonly Line[]; isHead: boolean }>;

const heightOf = (cells: readonly Cell[]) =>
  Math.max(...cells.map(({ lines }) => lines.length)) * lineHeight + 2 * padding;

function rule({ pdf, y }: Sheet): void {
  pdf.markContent("Artifact", { type: "Layout" });
  pdf
    .moveTo(page.margin, y)
    .lineTo(page.margin + textWidth, y)
    .lineWidth(0.5)
    .strokeColor("#808080")
    .stroke();
  pdf.endMarkedContent();
}

/** Draws lines `from` to `to` of each cell; without a row they are an ornament, as the headings of a later page are. */
function drawCells(
  sheet: Sheet,
  cells: readonly Cell[],
  elements: readonly Element[] | null,
  from: number,
  to: number,
) {
  for (const [index, { x, width, align, lines, isHead }] of cells.entries()) {
    const now = lines.slice(from, to);
    const element = elements?.[index];
    if (now.length === 0) continue;
    marked(sheet, element === undefined ? "ornament" : { element, tag: isHead ? "TH" : "TD" }, () => {
      for (const [row, line] of now.entries())
        drawLine(sheet, line, {
          x: x + padding,
          y: sheet.y + padding + row * lineHeight,
          size,
          width: width - 2 * padding,
          align,
        });
    });
  }
}

/** For which cells a heading stands. The option is newer than the types of the library. */
const scopeOf = (isHeadRow: boolean) =>
  ({ scope: isHeadRow ? "Column" : "Row" }) as PDFKit.Mixins.StructureElementOptions;

/** A table with its caption. The headings stand again on each page; a row longer than a page goes on on the next. */
export function drawTable(sheet: Sheet, table: PrintedTable, root: Element, measuring: Measuring): void {
  const { caption, columns, rows, hasRowHeads } = table;
  const { pdf } = sheet;
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  const places = columns.map(({ share, align }, index) => {
    const before = columns.slice(0, index).reduce((sum, column) => sum + column.share, 0);
    return { x: page.margin + (textWidth * before) / whole, width: (textWidth * share) / whole, align };
  });
  const cellsOf = (texts: readonly PrintedText[], isHeadRow: boolean): readonly Cell[] =>
    places.map((place, index) => {
      const isHead = isHeadRow || (hasRowHeads && index === 0);
      const lines = linesOf(
        texts[index] ?? "",
        size,
        place.width - 2 * padding,
        measuring,
        isHead ? "strong" : undefined,
      );
      return { ...place, lines, isHead };
    });
  const heads = cellsOf(
    columns.map(({ heading }) => heading),
    true,
  );
  const element = pdf.struct("Table");
  root.add(element);
  const rowElements = (parent: Element, cells: readonly Cell[], isHeadRow: boolean): readonly Element[] => {
    const row = pdf.struct("TR");
    parent.add(row);
    return cells.map(({ isHead }) => {
      const cell = isHead ? pdf.struct("TH", scopeOf(isHeadRow)) : pdf.struct("TD");
      row.add(cell);
      return cell;
    });
  };
  const drawHeads = (elements: readonly Element[] | null) => {
    rule(sheet);
    drawCells(sheet, heads, elements, 0, Number.POSITIVE_INFINITY);
    sheet.y += heightOf(heads);
    rule(sheet);
  };

  const captionLines = linesOf(caption, size, textWidth, measuring, "strong");
  const firstRow = rows[0] === undefined ? 0 : heightOf(cellsOf(rows[0], false));
  keepRoom(sheet, captionLines.length * lineHeight + heightOf(heads) + Math.min(firstRow, 6 * lineHeight) + 10);
  const captionElement = pdf.struct("Caption");
  element.add(captionElement);
  marked(sheet, { element: captionElement, tag: "Caption" }, () => {
    for (const line of captionLines) {
      drawLine(sheet, line, { x: page.margin, y: sheet.y, size });
      sheet.y += lineHeight;
    }
  });
  sheet.y += 3;
  const [head, body] = [pdf.struct("THead"), pdf.struct("TBody")];
  element.add(head).add(body);
  drawHeads(rowElements(head, heads, true));
  const nextPage = () => {
    newPage(sheet);
    drawHeads(null);
  };
  for (const texts of rows) {
    const cells = cellsOf(texts, false);
    const elements = rowElements(body, cells, false);
    const height = heightOf(cells);
    if (height > roomOn(sheet) && height <= wholePage - heightOf(heads)) nextPage();
    const count = Math.max(...cells.map(({ lines }) => lines.length));
    for (let at = 0; at < count; ) {
      const fits = Math.floor((roomOn(sheet) - 2 * padding) / lineHeight);
      if (fits < 1) {
        nextPage();
        continue;
      }
      const now = Math.min(fits, count - at);
      drawCells(sheet, cells, elements, at, at + now);
      sheet.y += now * lineHeight + 2 * padding;
      at += now;
      if (at < count) nextPage();
    }
    rule(sheet);
  }
  sheet.y += 10;
}
