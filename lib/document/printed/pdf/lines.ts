import type { PrintedText, RunStyle } from "../model";
import { printable, runsOf } from "../runs";
import type { Face } from "./fonts";

/** A stretch of a line in one look. */
export type Segment = Readonly<{ text: string; style: RunStyle; face: Face; width: number }>;

export type Line = readonly Segment[];

/** How wide a text is in a face, in points, and what can be drawn of it. */
export type Measuring = Readonly<{
  width: (text: string, face: Face, size: number) => number;
  /** The text with what the font has no sign for written as its code. */
  drawable: (text: string, face: Face) => string;
}>;

const faceOf: Readonly<Record<RunStyle, Face>> = {
  plain: "text",
  strong: "strong",
  emphasis: "emphasis",
  added: "strong",
  removed: "text",
};

type Word = Readonly<{ text: string; style: RunStyle; face: Face }>;

/** Words with the spaces behind them, so that a screen reader never runs two together. */
const words = (text: string) => text.match(/[^ ]+ *| +/g) ?? [];

/** A word that is wider than the line, cut where it has to be. */
function cut(word: Word, size: number, room: number, { width }: Measuring): readonly Word[] {
  if (width(word.text.trimEnd(), word.face, size) <= room) return [word];
  const pieces: Word[] = [];
  let piece = "";
  for (const sign of word.text) {
    if (piece !== "" && width(piece + sign, word.face, size) > room) {
      pieces.push({ ...word, text: piece });
      piece = "";
    }
    piece += sign;
  }
  return [...pieces, { ...word, text: piece }];
}

/** Breaks a text into lines of at most `room` points. Always at least one line. */
export function linesOf(
  text: PrintedText,
  size: number,
  room: number,
  measuring: Measuring,
  face?: Face,
): readonly Line[] {
  const lines: Segment[][] = [[]];
  let used = 0;
  const all = runsOf(text).flatMap(({ text: run, style }) => {
    const its = face ?? faceOf[style];
    return words(measuring.drawable(printable(run), its)).flatMap((word) =>
      cut({ text: word, style, face: its }, size, room, measuring),
    );
  });
  for (const word of all) {
    const width = measuring.width(word.text, word.face, size);
    const visible = measuring.width(word.text.trimEnd(), word.face, size);
    let line = lines.at(-1) ?? [];
    if (used > 0 && used + visible > room) {
      line = [];
      lines.push(line);
      used = 0;
    }
    const before = line.at(-1);
    if (before !== undefined && before.style === word.style && before.face === word.face)
      line[line.length - 1] = { ...before, text: before.text + word.text, width: before.width + width };
    else line.push({ ...word, width });
    used += width;
  }
  return lines;
}
