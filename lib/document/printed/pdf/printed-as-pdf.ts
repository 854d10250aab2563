import { create } from "fontkit";
import PDFDocument from "pdfkit";
import type { PrintedBlock, PrintedDocument, PrintedText } from "../model";
import { depthOf, writtenNumbers } from "../numbering";
import { printable } from "../runs";
import type { Face, PrintedFonts } from "./fonts";
import { linesOf, type Measuring } from "./lines";
import { openLists } from "./lists";
import { drawTable } from "./pdf-table";
import {
  drawLine,
  drawLines,
  type Element,
  keepRoom,
  leading,
  marked,
  newPage,
  page,
  type Sheet,
  startParagraph,
  textWidth,
} from "./sheet";

type Pdf = PDFKit.PDFDocument;

const faces: readonly Face[] = ["text", "strong", "emphasis", "heading"];
const sizes = { title: 19, text: 10, note: 9, page: 8.5, heading: { 1: 13.5, 2: 11.5, 3: 10.5 } } as const;
/** Points that each depth of numbered paragraphs is set in. */
const step = 26;

function measuringOf(pdf: Pdf, fonts: PrintedFonts): Measuring {
  const known = new Map<string, number>();
  const read = Object.fromEntries(faces.map((face) => [face, create(Buffer.from(fonts[face]))]));
  const has = (face: Face, code: number) => {
    const font = read[face];
    return font === undefined || !("hasGlyphForCodePoint" in font) || font.hasGlyphForCodePoint(code);
  };
  return {
    width(text, face, size) {
      const key = `${face} ${size} ${text}`;
      const before = known.get(key);
      if (before !== undefined) return before;
      const width = pdf.font(face).fontSize(size).widthOfString(text);
      known.set(key, width);
      return width;
    },
    drawable: (text, face) =>
      [...text]
        .map((sign) => {
          const code = sign.codePointAt(0) ?? 0;
          return has(face, code) ? sign : `[U+${code.toString(16).toUpperCase().padStart(4, "0")}]`;
        })
        .join(""),
  };
}

type Writing = Readonly<{ sheet: Sheet; root: Element; measuring: Measuring; lists: ReturnType<typeof openLists> }>;

function writeHeading(
  { sheet, root, measuring }: Writing,
  { level, text }: Extract<PrintedBlock, { kind: "heading" }>,
  number: string,
): void {
  const size = sizes.heading[level];
  const lines = linesOf(number === "" ? text : `${number} ${text}`, size, textWidth, measuring, "heading");
  sheet.y += level === 1 ? 14 : 9;
  keepRoom(sheet, lines.length * size * leading + 4 * sizes.text * leading);
  const tag = `H${level + 1}`; // the title is H1
  const element = sheet.pdf.struct(tag);
  root.add(element);
  drawLines(sheet, lines, { element, tag }, { x: page.margin, size });
  sheet.y += 3;
}

function writeParagraph({ sheet, root, measuring }: Writing, text: PrintedText): void {
  const element = sheet.pdf.struct("P");
  root.add(element);
  const lines = linesOf(text, sizes.text, textWidth, measuring);
  drawLines(sheet, lines, { element, tag: "P" }, { x: page.margin, size: sizes.text });
  sheet.y += 5;
}

/** A paragraph behind its number or bullet. */
function writeItem({ sheet, lists, measuring }: Writing, number: string, text: PrintedText, depth: number): void {
  const { label, body } = lists.item(depth);
  const x = page.margin + step * depth;
  const lines = linesOf(text, sizes.text, textWidth - step * (depth + 1), measuring);
  startParagraph(sheet, lines.length, sizes.text);
  marked(sheet, { element: label, tag: "Lbl" }, () => {
    const [line = []] = linesOf(`${number} `, sizes.text, textWidth, measuring, "text");
    drawLine(sheet, line, { x, y: sheet.y, size: sizes.text });
  });
  drawLines(sheet, lines, { element: body, tag: "LBody" }, { x: x + step, size: sizes.text });
  sheet.y += 3;
}

function writeNote(
  { sheet, root, measuring, lists }: Writing,
  { label, text, depth }: Extract<PrintedBlock, { kind: "note" }>,
): void {
  const { pdf } = sheet;
  const parent = lists.above(depth);
  if (parent === null) lists.close();
  const x = page.margin + step * (depth + 1);
  const runs = [
    { text: `${label}: `, style: "strong" as const },
    ...(typeof text === "string" ? [{ text, style: "emphasis" as const }] : text),
  ];
  const lines = linesOf(runs, sizes.note, page.width - page.margin - x, measuring);
  const element = pdf.struct("Note");
  (parent ?? root).add(element);
  keepRoom(sheet, Math.min(lines.length, 20) * sizes.note * leading);
  drawLines(sheet, lines, { element, tag: "Note" }, { x, size: sizes.note });
  sheet.y += 4;
}

function writeBlock(writing: Writing, block: PrintedBlock, number: string): void {
  const { sheet, root, measuring, lists } = writing;
  const isItem = block.kind === "paragraph" && block.number !== undefined;
  if (!isItem && block.kind !== "note") lists.close();
  switch (block.kind) {
    case "heading":
      writeHeading(writing, block, number);
      break;
    case "paragraph":
      if (block.number === undefined) writeParagraph(writing, block.text);
      else writeItem(writing, number, block.text, depthOf(block.number));
      break;
    case "list":
      for (const [index, item] of block.items.entries())
        writeItem(writing, block.isOrdered ? `${index + 1}.` : "•", item, 0);
      lists.close();
      sheet.y += 3;
      break;
    case "note":
      writeNote(writing, block);
      break;
    case "table":
      drawTable(sheet, block, root, measuring);
      break;
    case "page-break":
      newPage(sheet);
      break;
  }
}

type OutlineItem = Readonly<{ addItem: (title: string) => OutlineItem }>;

/** Bookmarks for the headings, nested as they are; each points at the page that stands now. */
function bookmarksOf(pdf: Pdf) {
  const open: OutlineItem[] = [pdf.outline as unknown as OutlineItem];
  return (level: number, title: string) => {
    const depth = Math.min(level, open.length);
    const item = open[depth - 1]?.addItem(title);
    open.length = depth;
    if (item !== undefined) open.push(item);
  };
}

/** Header, footer and number of each page: not read out, as they are no part of the text. */
function writePageLines({ pdf }: Sheet, { header, footer }: PrintedDocument, measuring: Measuring): void {
  const { start, count } = pdf.bufferedPageRange();
  const put = (text: string, y: number, align: "start" | "end") => {
    const [line = []] = linesOf(text, sizes.page, textWidth, measuring);
    drawLine({ pdf, y }, line, { x: page.margin, y, size: sizes.page, width: textWidth, align });
  };
  for (let index = 0; index < count; index++) {
    pdf.switchToPage(start + index);
    pdf.page.margins = { top: 0, bottom: 0, left: 0, right: 0 };
    pdf.markContent("Artifact", { type: "Pagination" });
    put(header, 40, "start");
    put(footer, page.height - 46, "start");
    put(`Page ${index + 1} of ${count}`, page.height - 46, "end");
    pdf.endMarkedContent();
  }
}

const collected = (pdf: Pdf): Promise<Uint8Array<ArrayBuffer>> =>
  new Promise((done, failed) => {
    const chunks: Uint8Array[] = [];
    pdf.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on("error", failed);
    pdf.on("end", () => done(Uint8Array.from(Buffer.concat(chunks))));
  });

/**
 * A document as a tagged PDF: headings, lists and tables marked as such, title, language and bookmarks, fonts embedded.
 * Letter pages. A sign that the fonts don't have is written as its code, such as [U+4E2D].
 */
export function printedAsPdf(printed: PrintedDocument, fonts: PrintedFonts): Promise<Uint8Array<ArrayBuffer>> {
  const { title, subtitle, author, language, date, blocks } = printed;
  const pdf = new PDFDocument({
    autoFirstPage: false,
    bufferPages: true,
    size: "LETTER",
    margins: { top: page.margin, bottom: 0, left: page.margin, right: page.margin },
    pdfVersion: "1.7",
    tagged: true,
    lang: language,
    displayTitle: true,
    font: Buffer.from(fonts.text) as unknown as string,
    info: {
      Title: printable(title),
      Subject: printable(subtitle),
      Author: printable(author),
      CreationDate: new Date(`${date}T00:00:00Z`),
    },
  });
  const bytes = collected(pdf);
  for (const face of faces) pdf.registerFont(face, Buffer.from(fonts[face]));
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  const sheet: Sheet = { pdf, y: page.margin };
  newPage(sheet);
  const measuring = measuringOf(pdf, fonts);
  const writing: Writing = { sheet, root, measuring, lists: openLists(pdf, root) };
  const bookmark = bookmarksOf(pdf);

  const titleElement = pdf.struct("H1");
  root.add(titleElement);
  drawLines(
    sheet,
    linesOf(title, sizes.title, textWidth, measuring, "heading"),
    { element: titleElement, tag: "H1" },
    { x: page.margin, size: sizes.title },
  );
  if (subtitle !== "") writeParagraph(writing, subtitle);
  sheet.y += 8;
  const numbers = writtenNumbers(blocks);
  for (const [index, block] of blocks.entries()) {
    const number = numbers[index] ?? "";
    writeBlock(writing, block, number);
    if (block.kind === "heading") bookmark(block.level, `${number} ${block.text}`.trim());
  }
  writePageLines(sheet, printed, measuring);
  root.end();
  pdf.end();
  return bytes;
}
