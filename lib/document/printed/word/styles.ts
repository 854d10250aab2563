import type { IStylesOptions } from "docx";

/** Twentieths of a point, in which word processors measure. */
export const twips = (inches: number) => Math.round(inches * 1440);

/** Half points, in which they measure letters. */
const halfPoints = (points: number) => 2 * points;

/** Fonts that word processors have; the ones of the pages would have to be installed. */
const textFont = "Arial";
const ink = "000000";

const heading = (points: number, before: number) => ({
  run: { font: textFont, size: halfPoints(points), bold: true, italics: false, color: ink },
  paragraph: { spacing: { before, after: 80 }, keepNext: true, keepLines: true },
});

/** Name of the style in which notes stand, so that a reader can find or hide all of them. */
export const noteStyle = "Note";

export const wordStyles = (language: string): IStylesOptions => ({
  default: {
    document: {
      run: { font: textFont, size: halfPoints(10), language: { value: language } },
      paragraph: { spacing: { after: 80, line: 264 } },
    },
    title: { run: { font: textFont, size: halfPoints(18), bold: true }, paragraph: { spacing: { after: 120 } } },
    heading1: heading(13, 320),
    heading2: heading(11, 240),
    heading3: heading(10, 200),
    caption: {
      run: { size: halfPoints(9), bold: true, italics: false, color: ink },
      paragraph: { keepNext: true, spacing: { before: 160, after: 60 } },
    },
  },
  paragraphStyles: [
    {
      id: noteStyle,
      name: noteStyle,
      basedOn: "Normal",
      quickFormat: true,
      run: { italics: true, size: halfPoints(9) },
      paragraph: { spacing: { before: 60, after: 100 } },
    },
  ],
});
