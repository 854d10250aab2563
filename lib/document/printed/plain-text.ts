import type { PrintedBlock, PrintedDocument, PrintedTable } from "./model";
import { depthOf, writtenNumbers } from "./numbering";
import { plainOf, printable } from "./runs";

/** Characters in a line, at most. */
const width = 88;
const step = 4;

/** A text broken at words, its lines hanging behind what stands before it. */
function hanging(lead: string, text: string): readonly string[] {
  const behind = " ".repeat(lead.length);
  const lines: string[] = [];
  let [line, isBegun] = [lead, false];
  for (const word of printable(text).split(/ +/)) {
    if (isBegun && line.length + word.length > width) {
      lines.push(line.trimEnd());
      line = behind;
    }
    line += `${word} `;
    isBegun = true;
  }
  return [...lines, line.trimEnd()];
}

const numbered = (number: string, level: number) => `${" ".repeat(level * step)}${number.padEnd(step - 1)} `;

const headed = (heading: string, cell: string) => `${heading}: ${cell === "" ? "–" : cell}`;

/** A table as lines that can be read aloud: each row names its columns. */
function tableLines({ caption, columns, rows, hasRowHeads }: PrintedTable): readonly string[] {
  const body = rows.flatMap((row) => {
    const cells = columns.map(({ heading }, index) => ({ heading, text: plainOf(row[index] ?? "") }));
    const [first, ...others] = cells;
    if (!hasRowHeads || first === undefined)
      return hanging("  - ", cells.map(({ heading, text }) => headed(heading, text)).join("; "));
    return hanging("  - ", `${first.text}. ${others.map(({ heading, text }) => headed(heading, text)).join("; ")}`);
  });
  return [...hanging("", caption), ...body, ""];
}

function blockLines(block: PrintedBlock, number: string): readonly string[] {
  switch (block.kind) {
    case "heading":
      return ["", ...hanging(number === "" ? "" : `${number}  `, block.text), ""];
    case "paragraph":
      return block.number === undefined
        ? ["", ...hanging("", plainOf(block.text)), ""]
        : hanging(numbered(number, depthOf(block.number)), plainOf(block.text));
    case "list":
      return [
        ...block.items.flatMap((item, index) =>
          hanging(`  ${block.isOrdered ? `${index + 1}.` : "-"} `, plainOf(item)),
        ),
        "",
      ];
    case "note":
      return hanging(" ".repeat((block.depth + 1) * step), `[${block.label}: ${plainOf(block.text)}]`);
    case "table":
      return tableLines(block);
    case "page-break":
      return [""];
  }
}

/** A document as plain text with hanging numbers, for mail and for the record. Ends with a line end. */
export function printedAsText({ title, subtitle, blocks }: PrintedDocument): string {
  const numbers = writtenNumbers(blocks);
  const lines = blocks.flatMap((block, index) => blockLines(block, numbers[index] ?? ""));
  const head = [title, subtitle].filter((line) => line !== "").map(printable);
  return `${[...head, "", ...lines]
    .join("\n")
    .replace(/\n{3,}/g, "\n\n")
    .trimEnd()}\n`;
}
