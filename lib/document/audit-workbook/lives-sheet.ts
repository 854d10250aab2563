import type { WriteSheet } from "hucre/xlsx";
import type { AuditLine } from "./audit-lines";
import type { LivesCells } from "./flow-formulas";
import type { InputPlaces } from "./inputs-sheet";
import { Laid } from "./laid";
import { lineCell } from "./line-columns";
import { names } from "./names";
import { firstYearColumn, livesSheet, yearColumn, yearRow, yearsOf } from "./years";

const headings = [
  "Line",
  "Bid",
  "What for",
  "What the row holds",
  "Renewals in the study",
  "Life of what was first laid, years",
  "Share of the life used, over all that lies there",
  "Value left at the end, before inflation",
];

/**
 * For each part with a life: what lies on the field when the study ends, by the year in which it was bought, and how much
 * of its life is used. Each renewal takes out the oldest that lies there.
 */
export function livesPage(
  lines: readonly AuditLine[],
  places: InputPlaces,
  studyYears: number,
): Readonly<{ sheet: WriteSheet; cells: (ref: string) => LivesCells | null }> {
  const laid = new Laid(livesSheet);
  laid.text(1, 1, "Lives", "title");
  laid.text(
    2,
    1,
    "What of each part lies on the field when the study ends. It says how much removal the study bears and what value is left.",
    "note",
  );
  laid.headings(yearRow, headings);
  const cells = new Map<string, LivesCells>();
  for (let year = 0; year <= studyYears; year += 1) laid.number(yearRow, firstYearColumn + year, year, "headingYear");
  let row = yearRow + 1;
  for (const audit of lines) {
    if (audit.line.kind !== "replacement-chain") continue;
    cells.set(audit.ref, part(laid, row, audit, places.rowOf(audit.ref), studyYears));
    row += 4;
  }
  return {
    sheet: laid.sheet({
      widths: [30, 8, 28, 34, 11, 12, 14, 16, 3, 3, ...Array.from({ length: studyYears + 1 }, () => 11)],
      frozen: { rows: yearRow, columns: 1 },
    }),
    cells: (ref) => cells.get(ref) ?? null,
  };
}

function part(
  laid: Laid,
  row: number,
  { ref, costed, line }: AuditLine,
  input: number,
  studyYears: number,
): LivesCells {
  const at = (key: Parameters<typeof lineCell>[0]) => lineCell(key, input);
  const rows = [
    "Share bought in the year that still lies there",
    "Share of its life that is used",
    "Paid for the whole part in that year",
  ];
  for (const [index, what] of rows.entries())
    for (const [column, text] of [ref, costed, line.label, what].entries()) laid.text(row + index, column + 1, text);
  const renewals = `$E$${row}`;
  const firstLife = `$F$${row}`;
  laid.formula(row, 5, `MAX(0,INT((${names.studyYears}-1-${at("first")})/${at("life")})+1)`, "workedYear");
  const toFirst = `${at("first")}-${names.serviceStart}`;
  laid.formula(row, 6, `IF(${at("replaced")}=1,${toFirst},MAX(${toFirst},${at("life")}))`, "workedYear");
  for (let year = 0; year <= studyYears; year += 1) {
    const column = yearColumn(year);
    const head = `${column}$${yearRow}`;
    const share = at("replaced");
    const lies = `${column}${row}`;
    const renewed = `AND(${head}>=${at("first")},${head}<${names.studyYears},MOD(${head}-${at("first")},${at("life")})=0)`;
    const later = `((${head}-${at("first")})/${at("life")}+1-${renewals})`;
    laid.formula(
      row,
      firstYearColumn + year,
      year === 0 ? `MAX(0,1-${renewals}*${share})` : `IF(${renewed},MIN(${share},MAX(0,1+${later}*${share})),0)`,
      "workedFactor",
    );
    laid.formula(
      row + 1,
      firstYearColumn + year,
      year === 0
        ? `IF(${lies}=0,0,MIN(1,(${names.studyYears}-${names.serviceStart})/${firstLife}))`
        : `IF(${lies}=0,0,MIN(1,(${names.studyYears}-${head})/${at("life")}))`,
      "workedFactor",
    );
    const price = year === 0 ? at("amount") : `${at("amount")}*(1-${at("saving")})`;
    laid.formula(row + 2, firstYearColumn + year, `IF(${lies}=0,0,${price}*(1+${at("growth")})^${head})`, "workedFlow");
  }
  const [lying, used, paid] = [row, row + 1, row + 2].map((one) => yearsOf(one, studyYears));
  laid.formula(row, 7, `SUMPRODUCT(${lying},${used})`, "workedFactor");
  laid.formula(row, 8, `SUMPRODUCT(${lying},${used}-1,${paid})`, "workedMoney");
  return { usedShare: laid.at(row, 7), residual: laid.at(row, 8) };
}
