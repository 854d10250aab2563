import { strFromU8, unzipSync } from "fflate";
import { SaxesParser } from "saxes";

export type CellValue = string | number | null;

/** A sheet with the results of its formulas, typed numbers and texts. An error reads “error #DIV/0!”. */
export type ReadSheet = Readonly<{
  rows: readonly (readonly CellValue[])[];
  /** Row and column count from 1. */
  at: (row: number, column: number) => CellValue;
  /** The row whose first cell reads so. */
  rowOf: (text: string) => number;
  /** The column of a heading in a row. */
  columnOf: (row: number, heading: string) => number;
}>;

type Tag = Readonly<{ name: string; attributes: Readonly<Record<string, string>> }>;

function parsed(xml: string, opened: (tag: Tag) => void, closed: (name: string, text: string) => void): void {
  const parser = new SaxesParser();
  let text = "";
  parser.on("opentag", (tag) => {
    text = "";
    opened(tag as unknown as Tag);
  });
  parser.on("text", (more) => {
    text += more;
  });
  parser.on("closetag", ({ name }) => {
    closed(name, text);
    text = "";
  });
  parser.write(xml).close();
}

/** The shared texts of a workbook; a text may come in several runs. */
function sharedTexts(xml: string): readonly string[] {
  const texts: string[] = [];
  parsed(
    xml,
    ({ name }) => {
      if (name === "si") texts.push("");
    },
    (name, text) => {
      if (name === "t") texts[texts.length - 1] += text;
    },
  );
  return texts;
}

const columnNumber = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

function cellsOf(xml: string, texts: readonly string[]): readonly (readonly CellValue[])[] {
  const rows: CellValue[][] = [];
  let cell: Tag["attributes"] = {};
  parsed(
    xml,
    ({ name, attributes }) => {
      if (name === "c") cell = attributes;
    },
    (name, text) => {
      if (name !== "v" && name !== "t") return;
      const [, letters = "", digits = "0"] = /^([A-Z]+)(\d+)$/.exec(cell.r ?? "") ?? [];
      rows[Number(digits) - 1] ??= [];
      const row = rows[Number(digits) - 1];
      if (row !== undefined) row[columnNumber(letters) - 1] = readValue(cell.t, text, texts);
    },
  );
  return rows;
}

function readValue(type: string | undefined, text: string, texts: readonly string[]): CellValue {
  if (type === "s") return texts[Number(text)] ?? null;
  if (type === "e") return `error ${text}`;
  if (type === "str" || type === "inlineStr") return text;
  return Number(text);
}

/** Reads what a spreadsheet program wrote. Shares no code with the writer. */
export function readBack(bytes: Uint8Array): (sheet: string) => ReadSheet {
  const parts = unzipSync(bytes);
  const partText = (name: string) => strFromU8(parts[name] ?? new Uint8Array());
  const texts = sharedTexts(partText("xl/sharedStrings.xml"));
  const names: string[] = [];
  parsed(
    partText("xl/workbook.xml"),
    ({ name, attributes }) => {
      if (name === "sheet") names.push(attributes.name ?? "");
    },
    () => undefined,
  );
  const found = (index: number, what: string) => {
    if (index === -1) throw new Error(`there is no ${what}`);
    return index + 1;
  };
  return (name) => {
    const number = found(names.indexOf(name), `sheet “${name}”`);
    const rows = cellsOf(partText(`xl/worksheets/sheet${number}.xml`), texts);
    return {
      rows,
      at: (row, column) => rows[row - 1]?.[column - 1] ?? null,
      rowOf: (text) =>
        found(
          rows.findIndex((row) => row?.[0] === text),
          `row “${text}” on “${name}”`,
        ),
      columnOf: (row, heading) => found((rows[row - 1] ?? []).indexOf(heading), `column “${heading}” on “${name}”`),
    };
  };
}
