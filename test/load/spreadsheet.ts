import { HyperFormula } from "hyperformula";
import type { Project } from "#lib/evaluation";
import { likelyOf } from "#lib/quantity";

/**
 * The job as somebody would lay it out in a spreadsheet: one sheet a bid with its claims converted, infill added up,
 * levels by year, prices by year discounted, and scores. Simpler than `evaluate` (single numbers, no ranges, no
 * workings, no rules), so it has less to do for the same project.
 */
export type Workbook = Readonly<{
  /** Changes every input a little and lets the engine work out everything that hangs on it. */
  recalculate: () => number;
}>;

const sharedSheet = "Brief";
const area = `${sharedSheet}!$B$1`;
const rate = `${sharedSheet}!$B$2`;

type Row = readonly (string | number)[];
type Bid = Project["bids"][number];

const column = (index: number): string =>
  index < 26 ? String.fromCharCode(65 + index) : `${column(Math.floor(index / 26) - 1)}${column(index % 26)}`;

const figureOf = (bid: Bid, index: number): number => {
  const value = bid.claims[index]?.value;
  return value?.kind === "quantity" ? likelyOf(value.quantity.reading) : 1;
};

/** Rows: claims, infill, nine years of levels, price lines over 21 years, eight scores. */
function bidRows(bid: Bid): readonly Row[] {
  const claims: Row[] = bid.claims.map((_, index) => [figureOf(bid, index), 1.5, `=A${index + 1}*B${index + 1}`]);
  const first = claims.length + 1;
  const infill: Row[] = bid.infill.components.map(({ arealDensity }, index) => [
    likelyOf(arealDensity.reading),
    1000,
    `=A${first + index}/B${first + index}`,
  ]);
  const last = first + infill.length - 1;
  const sums: Row[] = [[`=SUM(A${first}:A${last})`, `=A${last + 1}*${area}`, `=SUM(C${first}:C${last})`]];
  const levels: Row[] = Array.from({ length: 9 }, (_, year) => [`=C1+1*${year}`, `=C1+3*${year}`, `=C1+6*${year}`]);
  const start = last + 1 + levels.length;
  const factors: Row = Array.from({ length: 21 }, (_, year) => `=1/(1+${rate})^${year}`);
  const factorRow = start + 1;
  const prices: Row[] = bid.prices.map((_, index) => [
    ...Array.from({ length: 21 }, (_, year) => `=C${(index % 20) + 1}*${area}*${year % (index + 2) === 0 ? 1 : 0}`),
    `=SUMPRODUCT(A${factorRow + index + 1}:U${factorRow + index + 1},A$${factorRow}:U$${factorRow})`,
  ]);
  const priced = factorRow + prices.length;
  const totals: Row[] = [[`=SUM(V${factorRow + 1}:V${priced})`, `=A${priced + 1}/SUM(B${factorRow}:U${factorRow})`]];
  const scores: Row[] = Array.from({ length: 8 }, (_, index) => [
    `=MIN(1,MAX(0,(C${index + 1}-10)/(200-10)))`,
    0.125,
    `=A${priced + 2 + index}*B${priced + 2 + index}`,
  ]);
  const total: Row[] = [[`=SUM(C${priced + 2}:C${priced + 1 + scores.length})`]];
  return [...claims, ...infill, ...sums, ...levels, factors, ...prices, ...totals, ...scores, ...total];
}

export function workbookOf({ bids }: Project): Workbook {
  const sheets = Object.fromEntries(
    bids.map((bid) => [`Bid${column(Number(bid.id.replace(/\D/g, "")))}`, bidRows(bid)]),
  );
  const engine = HyperFormula.buildFromSheets(
    {
      [sharedSheet]: [
        ["Area", 7000],
        ["Rate", 0.03],
      ],
      ...(sheets as Record<string, (string | number)[][]>),
    },
    { licenseKey: "gpl-v3" },
  );
  const names = Object.keys(sheets);
  let round = 0;
  return {
    recalculate() {
      round += 1;
      engine.batch(() => {
        engine.setCellContents({ sheet: 0, row: 0, col: 1 }, 7000 + round);
        engine.setCellContents({ sheet: 0, row: 1, col: 1 }, 0.03 + round / 1e6);
        names.forEach((name, index) => {
          const sheet = engine.getSheetId(name);
          if (sheet === undefined) throw new Error(`no sheet ${name}`);
          bids[index]?.claims.forEach((_, row) => {
            engine.setCellContents({ sheet, row, col: 0 }, row + 1 + round / 10);
          });
        });
      });
      const lastSheet = engine.getSheetId(names.at(-1) ?? "") ?? 0;
      const { height } = engine.getSheetDimensions(lastSheet);
      const value = engine.getCellValue({ sheet: lastSheet, row: height - 1, col: 0 });
      if (typeof value !== "number") throw new Error(`the sheet ends in ${String(value)}`);
      return value;
    },
  };
}
