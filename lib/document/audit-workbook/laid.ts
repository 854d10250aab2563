import type { DataValidation, WriteSheet } from "hucre/xlsx";
import { addressOf } from "../workbook/cell";
import { plainText } from "./plain-text";
import { type Style, styles } from "./styles";

/** A column by its number, held fast in a formula: "$K". */
export const columnName = (column: number): string => addressOf(1, column).slice(0, -1);

/** A cell held fast in both directions: "$K$12". */
export const fixed = (row: number, column: number): string => `$${columnName(column)}$${row}`;

/** A sheet name as formulas write it. */
export const quoted = (sheet: string): string => (/^[A-Za-z]+$/.test(sheet) ? sheet : `'${sheet}'`);

/**
 * A sheet while it is laid out. Rows and columns count from 1. Text goes in as text whatever it begins with; formulas
 * are ours alone and never hold a text from outside. No results are stored: the spreadsheet program works them out.
 */
export class Laid {
  readonly #cells: NonNullable<WriteSheet["cells"]> = new Map();
  readonly #validations: DataValidation[] = [];
  readonly #ref: string;

  constructor(readonly name: string) {
    this.#ref = quoted(name);
  }

  text(row: number, column: number, text: string, style: Style = "text"): void {
    this.#cells.set(`${row - 1},${column - 1}`, { value: plainText(text), type: "string", style: styles[style] });
  }

  /** @throws RangeError for what is no number: a caller let an open side or a missing figure through */
  number(row: number, column: number, number: number, style: Style): void {
    if (!Number.isFinite(number)) throw new RangeError(`no number for ${this.at(row, column)}: ${number}`);
    this.#cells.set(`${row - 1},${column - 1}`, { value: number, type: "number", style: styles[style] });
  }

  formula(row: number, column: number, formula: string, style: Style): void {
    this.#cells.set(`${row - 1},${column - 1}`, { value: null, type: "formula", formula, style: styles[style] });
  }

  /** An empty cell to be filled. */
  empty(row: number, column: number, style: Style): void {
    this.#cells.set(`${row - 1},${column - 1}`, { value: null, type: "empty", style: styles[style] });
  }

  headings(row: number, names: readonly string[], from = 1): void {
    for (const [index, name] of names.entries()) this.text(row, from + index, name, "heading");
  }

  validate(rule: DataValidation): void {
    this.#validations.push(rule);
  }

  /** A cell as other sheets refer to it: "Inputs!$B$5". */
  at(row: number, column: number): string {
    return `${this.#ref}!${fixed(row, column)}`;
  }

  /** A block of one column, or of one row, as other sheets refer to it. */
  span(from: readonly [row: number, column: number], to: readonly [row: number, column: number]): string {
    return `${this.#ref}!${fixed(...from)}:${fixed(...to)}`;
  }

  sheet(
    layout: Readonly<{ widths: readonly number[]; frozen?: Readonly<{ rows: number; columns: number }> }>,
  ): WriteSheet {
    return {
      name: this.name,
      cells: this.#cells,
      columns: layout.widths.map((width) => ({ width })),
      ...(layout.frozen === undefined ? {} : { freezePane: layout.frozen }),
      ...(this.#validations.length === 0 ? {} : { dataValidations: this.#validations }),
      pageSetup: { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    };
  }
}
