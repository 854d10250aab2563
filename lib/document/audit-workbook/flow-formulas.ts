import type { FlowRow } from "./flow-rows";
import { type LineColumn, lineCell, words } from "./line-columns";
import { names } from "./names";
import { factorCell, factorRows, yearRow } from "./years";

/** Cells of the sheet “Lives” that say what of a part is left at the end of the study. */
export type LivesCells = Readonly<{ usedShare: string; residual: string }>;

/**
 * The formula of one flow in the column of a year. Every payment but the first carries growth and the level of prices,
 * which is 0 after the end of the study.
 */
export function flowFormula(
  { audit, part, recurrence }: FlowRow,
  row: number,
  column: string,
  lives: LivesCells | null,
): string {
  const { line } = audit;
  const year = `${column}$${yearRow}`;
  const at = (key: LineColumn) => lineCell(key, row);
  const level = factorCell(recurrence === "yearly" ? factorRows.levelYearly : factorRows.levelSingle, column);
  const grown = `(1+${at("growth")})^${year}*${level}`;
  switch (line.kind) {
    case "at-base-date":
      return `IF(${year}=0,${at("amount")},0)`;
    case "in-year":
      return `IF(${year}=${at("first")},${at("amount")}*${grown},0)`;
    case "yearly":
      return `IF(AND(${year}>=${at("first")},${year}<=${at("last")}),${at("amount")}*${grown},0)`;
    case "periodic": {
      const listed = `","&SUBSTITUTE(${at("except")}," ","")&","`;
      const isPaid = [
        `${year}>=${at("first")}`,
        `${year}<=${at("last")}`,
        `MOD(${year}-${at("first")},${at("every")})=0`,
        `ISERROR(FIND(","&${year}&",",${listed}))`,
      ];
      return `IF(AND(${isPaid.join(",")}),${at("amount")}*${grown},0)`;
    }
    case "replacement-chain":
      return chainFormula(part, { year, at, grown, level }, lives);
  }
}

type Cells = Readonly<{ year: string; at: (key: LineColumn) => string; grown: string; level: string }>;

function chainFormula(part: FlowRow["part"], { year, at, grown, level }: Cells, lives: LivesCells | null): string {
  const isRenewed = [
    `${year}>=${at("first")}`,
    `${year}<${names.studyYears}`,
    `MOD(${year}-${at("first")},${at("life")})=0`,
  ].join(",");
  switch (part) {
    case "first-cost":
      return `IF(${year}=0,${at("amount")},0)`;
    case "renewal":
      return `IF(AND(${isRenewed}),${at("amount")}*(1-${at("saving")})*${at("replaced")}*${grown},0)`;
    case "removal-at-renewal":
      return `IF(AND(${isRenewed}),${at("removalAmount")}*${at("replaced")}*${grown},0)`;
    case "removal-at-study-end": {
      const rule = at("removalAtEnd");
      const borne = `IF(${rule}="${words.usedShare}",${lives?.usedShare},IF(${rule}="${words.full}",1,0))`;
      return `IF(${year}=${names.studyYears},${at("removalAmount")}*${borne}*${grown},0)`;
    }
    case "residual": {
      const rule = at("residual");
      const left = `IF(${rule}="${words.straightLine}",${lives?.residual},IF(${rule}="${words.stated}",-${at("statedResidual")},0))`;
      return `IF(${year}=${names.studyYears},${left}*${level},0)`;
    }
    case "price":
      throw new RangeError("a part with a life has a first cost and no price");
  }
}
