import { amountText, costCategories, costLines, type PriceLine, priceRoles, type ShareOf } from "#lib/cost";
import type { CurrencyCode, In } from "#lib/quantity";
import { amountCells, medianCells, priceColumns, removalColumns } from "./amount-cells";
import type { AuditLine } from "./audit-lines";
import type { Laid } from "./laid";
import { type LineColumn, lineColumn, ownCell, words } from "./line-columns";
import { names } from "./names";
import { fifteenDigits, writtenAmount } from "./written-amount";

/** What the cells of a line refer to besides the line. */
export type LineSetting = Readonly<{
  rowOf: (ref: string) => number;
  /** The row of another line of the same bid, as it stands where this one does. */
  beside: (line: AuditLine, other: string) => number;
  span: (key: LineColumn) => string;
  area: In<"m²">;
  currency: CurrencyCode;
}>;

export const roleWords = ({ role }: PriceLine): string => priceRoles[role.kind].label;
export const kindWords = ({ kind }: PriceLine): string => costLines[kind].label;
export const giverWords = (givenBy: PriceLine["givenBy"]): string => (givenBy === "bid" ? words.bid : words.owner);

/** What a part that is bought and renewed has no single category of. */
const manyCategories = "by part";

/** One price line as typed cells, with the formula of what it comes to at the base date. */
export function lineRow(laid: Laid, row: number, audit: AuditLine, setting: LineSetting): void {
  const { line, levelled, inBid } = audit;
  const text = (key: LineColumn, said: string) => laid.text(row, lineColumn(key), said);
  text("ref", audit.ref);
  text("label", line.label);
  text("costed", audit.costed);
  text("category", line.kind === "replacement-chain" ? manyCategories : costCategories[line.category].label);
  text("givenBy", giverWords(line.givenBy));
  text("from", audit.from);
  text("role", roleWords(line));
  text("kind", kindWords(line));
  text("asEntered", amountText(line.amount, setting.area, setting.currency));
  text("document", line.document);
  text("page", line.page);
  text("note", audit.note);
  laid.number(row, lineColumn("levelled"), levelled ? 1 : 0, "inputYear");
  laid.number(row, lineColumn("inBid"), inBid ? 1 : 0, "inputYear");

  const flag = levelled ? "levelled" : "inBid";
  const amount = writtenAmount(line.amount);
  const plain = amountCells(laid, row, priceColumns, amount);
  if (plain !== null) laid.formula(row, lineColumn("plain"), plain, "workedMoney");
  if (amount.kind === "share")
    laid.formula(row, lineColumn("sum"), sumOf(amount.of, row, flag, setting.span), "workedMoney");
  laid.formula(
    row,
    lineColumn("amount"),
    plain === null ? `${ownCell("price", row)}*${ownCell("sum", row)}` : ownCell("plain", row),
    "workedMoney",
  );
  const isPaidThen = plain !== null && (line.kind === "at-base-date" || line.kind === "replacement-chain");
  laid.formula(row, lineColumn("paidThen"), isPaidThen ? ownCell("plain", row) : "0", "workedMoney");
  medianCells(laid, row, audit, setting.rowOf);
  schedule(laid, row, audit, setting);
}

/**
 * The sum that a share is taken of: what the lines of the bid come to that are paid at the base date. Bonds and taxes
 * come on top of it, and no share is taken of another one.
 */
function sumOf(of: ShareOf, row: number, flag: "levelled" | "inBid", span: LineSetting["span"]): string {
  const equal = (key: LineColumn, to: string) => `,${span(key)},${to}`;
  const theirs = equal("givenBy", `"${words.bid}"`);
  const noAddOns = equal("role", `"<>${priceRoles.bond.label}"`) + equal("role", `"<>${priceRoles.tax.label}"`);
  const chosen = {
    "base-bid": theirs + equal("role", `"${priceRoles["base-bid"].label}"`),
    "accepted-bid": theirs + noAddOns,
    "levelled-bid": noAddOns,
  }[of];
  return `SUMIFS(${span("paidThen")}${equal("costed", ownCell("costed", row))}${equal(flag, "1")}${chosen})`;
}

function schedule(laid: Laid, row: number, audit: AuditLine, setting: LineSetting): void {
  const { line } = audit;
  const year = (key: LineColumn, years: number) => laid.number(row, lineColumn(key), years, "inputYear");
  const yearOr = (key: LineColumn, stated: Readonly<{ years: number }> | null, usual: string) =>
    stated === null ? laid.formula(row, lineColumn(key), usual, "workedYear") : year(key, stated.years);
  const share = (key: LineColumn, stated: Readonly<{ value: number }> | null, usual: number) =>
    laid.number(row, lineColumn(key), stated === null ? usual : fifteenDigits(stated.value), "inputShare");
  if (line.kind === "at-base-date") return;
  share("growth", line.escalation, 0);
  switch (line.kind) {
    case "in-year":
      year("first", line.year.years);
      return;
    case "yearly":
      yearOr("first", line.from, `${names.serviceStart}+1`);
      yearOr("last", line.to, names.studyYears);
      return;
    case "periodic":
      year("every", line.every.years);
      yearOr("first", line.from, `${names.serviceStart}+${ownCell("every", row)}`);
      yearOr("last", line.until, names.studyYears);
      laid.text(row, lineColumn("except"), line.except.join(", "), "inputText");
      return;
    case "replacement-chain": {
      if (line.reuse === null) year("life", line.life.years);
      else {
        year("lives", line.reuse.lives.years);
        const other = setting.beside(audit, line.reuse.line);
        laid.formula(row, lineColumn("life"), `${ownCell("lives", row)}*${ownCell("life", other)}`, "workedYear");
      }
      laid.text(row, lineColumn("lifeGivenBy"), giverWords(line.lifeGivenBy));
      yearOr("first", line.firstReplacement, `${names.serviceStart}+${ownCell("life", row)}`);
      share("replaced", line.replacedShare, 1);
      share("saving", line.renewalSaving, 0);
      const left = { "straight-line": words.straightLine, stated: words.stated, none: words.none };
      laid.text(row, lineColumn("residual"), left[line.residual], "inputText");
      if (line.residual === "stated" && line.statedResidual !== null)
        laid.number(row, lineColumn("statedResidual"), line.statedResidual.value / 100, "inputMoney");
      removal(laid, row, line, audit.levelled ? "levelled" : "inBid", setting);
    }
  }
}

function removal(
  laid: Laid,
  row: number,
  line: PriceLine<"replacement-chain">,
  flag: "levelled" | "inBid",
  { span }: LineSetting,
): void {
  const atEnd = { "used-life-share": words.usedShare, full: words.full, none: words.none };
  laid.text(row, lineColumn("removalAtEnd"), atEnd[line.removalAtStudyEnd], "inputText");
  if (line.removal === null) return;
  const amount = writtenAmount(line.removal);
  const plain = amountCells(laid, row, removalColumns, amount);
  if (amount.kind === "share")
    laid.formula(row, lineColumn("removalSum"), sumOf(amount.of, row, flag, span), "workedMoney");
  laid.formula(
    row,
    lineColumn("removalAmount"),
    plain ?? `${ownCell("removalPrice", row)}*${ownCell("removalSum", row)}`,
    "workedMoney",
  );
  laid.text(row, lineColumn("removalGivenBy"), giverWords(line.removalGivenBy));
}
