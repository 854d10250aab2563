/** Digits with a sign, separators, a fraction or a per cent sign: what a spreadsheet may take as a number. */
const number = /^[+-]?(\d+|\d{1,3}(,\d{3})+)(\.\d+)?( ?%)?$/;
/** What a spreadsheet would run as a formula, the full-width forms included, or lets text slip into another cell. */
const startsFormula = /^[\s]*[=+\-@＝＋－＠]|^[\t\r\n]/;

/** A cell that no spreadsheet takes for a formula. Text that could start one gets an apostrophe; true numbers stay. */
export function guardedCell(text: string): string {
  const oneLine = text.replace(/[\t\r\n]+/g, " ").trim();
  const guarded = startsFormula.test(text) && !number.test(oneLine) ? `'${oneLine}` : oneLine;
  return guarded.startsWith('"') ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}

/** A table as spreadsheets paste it: tabs between cells, line ends between rows. */
export const tabSeparated = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.map(guardedCell).join("\t")).join("\n");
