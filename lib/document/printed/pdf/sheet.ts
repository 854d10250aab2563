import type { RunStyle } from "../model";
import type { Line } from "./lines";

type Pdf = PDFKit.PDFDocument;
export type Element = PDFKit.PDFStructureElement;

/** A letter page in points. */
export const page = { width: 612, height: 792, margin: 72 } as const;
export const textWidth = page.width - 2 * page.margin;
const bottom = page.height - page.margin;

/** Height of a line as a share of the size of its letters. */
export const leading = 1.35;

/** Where lines go: an element of the structure with its tag, or an ornament that is not read out. */
export type Spoken = Readonly<{ element: Element; tag: string } | "ornament">;

/** The pages as they fill. `y` is where the next line starts. */
export type Sheet = {
  readonly pdf: Pdf;
  y: number;
};

/** Points left on the page. */
export const roomOn = (sheet: Sheet): number => bottom - sheet.y;
export const wholePage = bottom - page.margin;

export function newPage(sheet: Sheet): void {
  sheet.pdf.addPage();
  sheet.y = page.margin;
}

/** Starts a page where less than so many points are left. */
export function keepRoom(sheet: Sheet, points: number): void {
  if (roomOn(sheet) < Math.min(points, wholePage)) newPage(sheet);
}

/** Marks what `draw` draws as part of the structure, or as an ornament. */
export function marked({ pdf }: Sheet, spoken: Spoken, draw: () => void): void {
  if (spoken === "ornament") pdf.markContent("Artifact", { type: "Layout" });
  else spoken.element.add(pdf.markStructureContent(spoken.tag));
  draw();
  pdf.endMarkedContent();
}

/** Where the line under or through a text of a comparison runs, as a share of the size of its letters. */
const ruleOf: Readonly<Partial<Record<RunStyle, number>>> = { added: 1.12, removed: 0.72 };

/** One line with its left end at `x`; `align` moves it to the end of `width`. */
export function drawLine(
  { pdf }: Sheet,
  line: Line,
  at: Readonly<{ x: number; y: number; size: number; width?: number; align?: "start" | "end" }>,
): void {
  const whole = line.reduce((sum, { width }) => sum + width, 0);
  let x = at.align === "end" && at.width !== undefined ? at.x + at.width - whole : at.x;
  for (const { text, style, face, width } of line) {
    pdf.font(face).fontSize(at.size).text(text, x, at.y, { lineBreak: false });
    const ruled = ruleOf[style];
    if (ruled !== undefined) {
      const y = at.y + ruled * at.size;
      pdf
        .moveTo(x, y)
        .lineTo(x + width, y)
        .lineWidth(0.6)
        .strokeColor("#000000")
        .stroke();
    }
    x += width;
  }
}

/**
 * How many of the lines of a paragraph go on this page; none where it should start on the next. Of three lines or more,
 * none stands alone on a page.
 */
function fitting(sheet: Sheet, left: number, size: number): number {
  const room = Math.min(left, Math.floor(roomOn(sheet) / (size * leading)));
  const fits = left > 2 && room === left - 1 ? room - 1 : room;
  return fits < Math.min(2, left) ? 0 : fits;
}

/** Starts a page where a paragraph of so many lines would not start on this one. */
export function startParagraph(sheet: Sheet, lines: number, size: number): void {
  if (fitting(sheet, lines, size) === 0) newPage(sheet);
}

/** Lines below each other, over as many pages as it takes. */
export function drawLines(
  sheet: Sheet,
  lines: readonly Line[],
  spoken: Spoken,
  { x, size }: Readonly<{ x: number; size: number }>,
): void {
  for (let at = 0; at < lines.length; ) {
    startParagraph(sheet, lines.length - at, size);
    const now = lines.slice(at, at + fitting(sheet, lines.length - at, size));
    marked(sheet, spoken, () => {
      for (const line of now) {
        drawLine(sheet, line, { x, y: sheet.y, size });
        sheet.y += size * leading;
      }
    });
    at += now.length;
  }
}
