/** The two widths for which each drawing is made: a desk or a sheet of paper, and a phone. */
export type DrawingWidth = "wide" | "narrow";

/**
 * How wide the text of a drawing may come out, to keep it apart from other text.
 * @param size of the font, in units of the drawing
 * @source measured in our text font: lines of figures and words come to 0.40 to 0.50 of its size a letter
 */
export const roomForWords = (words: string, size: number): number => words.length * size * 0.52;
