import { failed, type Result, succeeded } from "#lib/quantity";
import { traceLimits } from "./limits";
import type { DecimalMark, Separator, TraceFormat, TraceProblem } from "./model";

const separators: Readonly<Record<Separator, RegExp>> = { tab: /\t/, semicolon: /;/, comma: /,/, space: /[ \t]+/ };
const separatorNames: readonly Separator[] = ["tab", "semicolon", "comma", "space"];

/** Lines that have to agree before they count as samples. */
const agreeing = 8;

export const linesOf = (text: string): readonly string[] => {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  while (lines.length > 0 && (lines.at(-1) ?? "").trim() === "") lines.pop();
  return lines;
};

/** The cells of a line without quotes around them; separators at its end make no cell. */
export function cellsOf(line: string, separator: Separator): readonly string[] {
  const cells = line
    .trim()
    .split(separators[separator])
    .map((cell) => cell.trim().replace(/^"(.*)"$/, "$1"));
  while (cells.length > 1 && cells.at(-1) === "") cells.pop();
  return cells;
}

const pointNumber = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;

/** The number a cell says with that decimal mark; null where it says something else. */
export function numberOf(cell: string, decimal: DecimalMark): number | null {
  const plain = decimal === "," ? (cell.includes(".") ? "" : cell.replace(",", ".")) : cell;
  const text = plain.replace(/^\u2212/, "-");
  return pointNumber.test(text) ? Number(text) : null;
}

type Attempt = TraceFormat & Readonly<{ values: string }>;

/** The first line from which the lines agree on all being numbers; null where that never happens. */
function attempt(lines: readonly string[], separator: Separator, decimal: DecimalMark): Attempt | null {
  const rows = lines.slice(0, traceLimits.headingLines + agreeing).map((line) => cellsOf(line, separator));
  const numeric = rows.map((cells) => cells.every((cell) => numberOf(cell, decimal) !== null));
  const first = rows.findIndex((cells, index) => {
    const run = rows.slice(index, index + agreeing);
    return run.every((row, offset) => numeric[index + offset] === true && row.length === cells.length);
  });
  const data = first < 0 ? undefined : rows[first];
  if (data === undefined || data.length > traceLimits.columns) return null;
  const above = rows.slice(Math.max(0, first - 3), first).filter((cells) => cells.length === data.length);
  const headings = data.map((_, column) =>
    above
      .map((cells) => cells[column] ?? "")
      .join(" ")
      .trim(),
  );
  const values = JSON.stringify(
    rows.slice(first, first + agreeing).map((row) => row.map((cell) => numberOf(cell, decimal))),
  );
  return { separator, decimal, firstDataLine: first + 1, columns: data.length, headings, values };
}

const spoken = ({ separator, decimal, columns }: TraceFormat): string =>
  columns === 1
    ? `one column with “${decimal}” before decimals`
    : `${columns} columns with a ${separator} between them and “${decimal}” before decimals`;

/**
 * How the numbers stand in a file: what separates them, what stands before decimals, where they start. Where a text
 * reads in two ways that give different numbers, a heading above each column decides; without one, both are reported.
 */
export function traceFormat(text: string): Result<TraceFormat, TraceProblem> {
  if (text.length > traceLimits.characters) return failed({ kind: "too-long", length: text.length });
  const lines = linesOf(text);
  const attempts = separatorNames
    .flatMap((separator) => [attempt(lines, separator, "."), attempt(lines, separator, ",")])
    .filter((found) => found !== null);
  const first = Math.min(...attempts.map(({ firstDataLine }) => firstDataLine));
  const earliest = attempts.filter(({ firstDataLine }) => firstDataLine === first);
  const different = earliest.filter(
    (one, index) => earliest.findIndex(({ values }) => values === one.values) === index,
  );
  const headed = different.filter(({ headings }) => headings.every((heading) => heading !== ""));
  const most = Math.max(...headed.map(({ columns }) => columns));
  const [chosen, ...others] = different.length > 1 ? headed.filter(({ columns }) => columns === most) : different;
  if (different.length === 0) return failed({ kind: "no-numbers", read: (lines[0] ?? "").slice(0, 60) });
  if (chosen === undefined || others.length > 0)
    return failed({
      kind: "separator-ambiguous",
      line: first,
      read: (lines[first - 1] ?? "").slice(0, 60),
      readings: different.map(spoken),
    });
  const { values: _, ...format } = chosen;
  return succeeded(format);
}
