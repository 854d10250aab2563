import type { WriteSheet } from "hucre/xlsx";
import { type ScopeRow, scopeStandings } from "#lib/cost";
import type { Evaluation } from "#lib/evaluation";
import type { AuditLines } from "./audit-lines";
import type { DiscountingPlaces } from "./discounting-sheet";
import type { FlowPlaces } from "./flows-sheet";
import type { InputPlaces } from "./inputs-sheet";
import { fixed, Laid } from "./laid";
import { lineCell, words } from "./line-columns";

const levellingSheet = "Levelling";
const head = 4;
const perBid = ["standing", "what counts", "amount at the base date", "present value", "where it stands, and notes"];
const amountOffset = 2;
/** Stands where an amount would stand, and is counted. */
const openWord = "open";

const firstColumn = (bid: number): number => 2 + bid * perBid.length;

/** The formula that counts the items of a bid without a figure, known before the sheet is laid out. */
export function openItems(bid: number, items: number): string {
  const column = firstColumn(bid) + amountOffset;
  const last = head + Math.max(1, items);
  return `COUNTIF(${levellingSheet}!${fixed(head + 1, column)}:${fixed(last, column)},"${openWord}")`;
}

type Setting = Readonly<{
  evaluation: Evaluation;
  lines: AuditLines;
  inputs: InputPlaces;
  flows: FlowPlaces;
  discounting: DiscountingPlaces;
}>;

/** How each bid stands to each item of scope, what stands in where it lacks one, and the sums as bid and levelled. */
export function levellingPage({ evaluation, lines, inputs, flows, discounting }: Setting): WriteSheet {
  const laid = new Laid(levellingSheet);
  laid.text(1, 1, "Levelling", "title");
  laid.text(
    2,
    1,
    "Each item of scope in each bid. Several items may stand in one price line, so amounts of items are not added up; the sums below count each line once. “Totals” says for which bids no total can be given.",
    "note",
  );
  const items = evaluation.bids[0]?.cost.scope ?? [];
  laid.headings(head, ["Item of scope"]);
  for (const [index, { label }] of items.entries()) laid.text(head + 1 + index, 1, label);
  const refs = new Set(lines.lines.map(({ ref }) => ref));
  const sumHead = head + Math.max(1, items.length) + 3;
  laid.text(sumHead - 1, 1, "Sums", "section");
  for (const [index, [label]] of sums.entries()) laid.text(sumHead + index, 1, label, "asked");
  for (const [index, { letter, cost }] of evaluation.bids.entries()) {
    const column = firstColumn(index);
    laid.headings(
      head,
      perBid.map((what) => `Bid ${letter}: ${what}`),
      column,
    );
    for (const [item, row] of cost.scope.entries()) scopeCells(laid, head + 1 + item, column, letter, row);
    for (const [sum, [, conditions]] of sums.entries()) {
      const chosen = `${flows.span("costed")},"${letter}"${conditions((key) => flows.span(key))}`;
      laid.formula(sumHead + sum, column + amountOffset, `SUMIFS(${flows.yearSpan(0)},${chosen})`, "sum");
      laid.formula(sumHead + sum, column + amountOffset + 1, `SUMIFS(${discounting.span(null)},${chosen})`, "sum");
    }
  }

  function scopeCells(to: Laid, row: number, column: number, letter: string, scope: ScopeRow): void {
    const { outcome, standing, document, page, note } = scope;
    to.text(row, column, scopeStandings[standing].label);
    const where = [document, page === "" ? "" : `page ${page}`, note].filter((text) => text !== "").join("; ");
    to.text(row, column + amountOffset + 2, where);
    const line = outcome.kind === "in-line" || outcome.kind === "plugged" ? outcome.line : null;
    const ref = line !== null && refs.has(`${letter}:${line}`) ? inputs.rowOf(`${letter}:${line}`) : null;
    to.text(row, column + 1, outcomeWords(scope, ref !== null));
    if (outcome.kind === "open") to.text(row, column + amountOffset, openWord);
    else if (ref === null) for (const one of [0, 1]) to.text(row, column + amountOffset + one, "");
    else {
      to.formula(row, column + amountOffset, lineCell("amount", ref), "workedMoney");
      to.formula(row, column + amountOffset + 1, discounting.ofLine(lineCell("ref", ref)), "workedMoney");
    }
  }

  const widths = evaluation.bids.flatMap(() => [14, 34, 16, 16, 34]);
  return laid.sheet({ widths: [34, ...widths], frozen: { rows: head, columns: 1 } });
}

function outcomeWords({ outcome }: ScopeRow, isCounted: boolean): string {
  switch (outcome.kind) {
    case "nothing-added":
      return "nothing is added";
    case "in-line":
      return isCounted
        ? `stands in the price line ${outcome.line}`
        : `stands in the price line ${outcome.line}, which a link replaces`;
    case "plugged":
      return outcome.by === "median" ? "the median of the other bids stands in" : "the owner’s figure stands in";
    case "open":
      return outcome.because;
  }
}

type Column = Parameters<FlowPlaces["span"]>[0];
type Conditions = (span: (key: Column) => string) => string;

/** The sums of a bid: whose word they stand on, and what that comes to. */
const sums: readonly (readonly [label: string, conditions: Conditions])[] = [
  ["The bidder’s own prices, as bid", (span) => `,${span("asBid")},1`],
  [
    "The bidder’s prices, in the levelled cost",
    (span) => `,${span("levelled")},1,${span("from")},"Bid*",${span("givenBy")},"${words.bid}"`,
  ],
  [
    "The owner’s estimates on lines of the bid",
    (span) => `,${span("levelled")},1,${span("from")},"Bid*",${span("givenBy")},"${words.owner}"`,
  ],
  ["Plugs", (span) => `,${span("levelled")},1,${span("from")},"Plug*"`],
  ["Technical links", (span) => `,${span("levelled")},1,${span("from")},"Technical link*"`],
  ["Levelled", (span) => `,${span("levelled")},1`],
];
