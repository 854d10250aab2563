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
