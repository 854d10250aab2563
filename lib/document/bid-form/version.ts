import { crc32 } from "../workbook/crc32";
import { claimsTable, formSheets, infillTable, pricesTable, singleCells } from "./sheets";

const layout = JSON.stringify([
  formSheets,
  singleCells,
  [claimsTable, infillTable, pricesTable].map(({ headingRow, columns }) => [
    headingRow,
    columns.map(({ heading }) => heading),
  ]),
]);

/**
 * The version of the form: a number that changes when the meaning of the form does, and a checksum of its sheets and
 * headings, so that a form with other columns is never read as if it had these.
 */
export const formVersion = `1.${crc32(new TextEncoder().encode(layout)).toString(16).padStart(8, "0")}`;
