/** The list with lines in place of one entry. Blank entries after it give way to the lines, as cells of a sheet do. */
export function withLines(texts: readonly string[], index: number, lines: readonly string[]): readonly string[] {
  const after = texts.slice(index + 1);
  const written = after.findIndex((text) => text.trim() !== "");
  const blank = Math.min(written < 0 ? after.length : written, Math.max(0, lines.length - 1));
  return [...texts.slice(0, index), ...lines, ...after.slice(blank)];
}

/** The lines of a pasted block as entries: cells of a row joined by a comma, empty lines left out. */
export const pastedLines = (block: string): readonly string[] =>
  block
    .split(/\r?\n/)
    .map((line) =>
      line
        .split("\t")
        .map((cell) => cell.trim())
        .filter((cell) => cell !== "")
        .join(", "),
    )
    .filter((line) => line !== "");
