import { propertyOf } from "#lib/claim";
import {
  columnLabel,
  inColumn,
  type PromisedRow,
  promisedColumns,
  type RegisterLine,
  registerSentence,
} from "#lib/submittal";
import type { PrintedBlock, PrintedDocument, PrintedTable } from "../printed/model";
import { methodsInWords, type ToldRow } from "./promised-csv";

/** What stands on the document beside its facts. */
export type FactsFrame = Readonly<{
  project: string;
  owner: string;
  notice: string;
  /** “Bid A”; empty where nobody has said whose bid was taken. */
  bid: string;
  /** The day it speaks of, as 2027-11-26, and the same in words. */
  date: string;
  dateInWords: string;
}>;

const nameOf = (row: PromisedRow): string => {
  const methods = methodsInWords(row);
  const { label } = propertyOf(row.property);
  return methods === "" ? label : `${label}, by ${methods}`;
};

/** Every figure of one row, column by column, with what shows it. */
function rowTable(row: PromisedRow): PrintedTable {
  return {
    kind: "table",
    caption: nameOf(row),
    columns: [
      { heading: "Who", share: 2, align: "start" },
      { heading: "Figure", share: 3, align: "start" },
      { heading: "How it was got and where it stands", share: 7, align: "start" },
    ],
    rows: promisedColumns([row]).flatMap((column) =>
      inColumn(row, column).map(({ value, detail, document, page }) => [
        columnLabel(column),
        value,
        [detail, document, page === "" ? "" : `page ${page}`].filter((part) => part !== "").join(", "),
      ]),
    ),
    hasRowHeads: true,
  };
}

const list = (items: readonly string[]): readonly PrintedBlock[] =>
  items.length === 0 ? [] : [{ kind: "list", isOrdered: false, items }];

const framed = (
  { project, owner, notice, bid, date, dateInWords }: FactsFrame,
  title: string,
  blocks: readonly PrintedBlock[],
): PrintedDocument => ({
  title,
  subtitle: [project, bid, dateInWords].filter((part) => part !== "").join(", "),
  author: owner,
  language: "en-US",
  date,
  header: [project, title].join(" · "),
  footer: [owner, notice].filter((part) => part !== "").join(" · "),
  blocks,
});

const noCause =
  "These are facts, as entered and as measured. They say nothing of the cause and are no legal advice; the contract and the law decide what follows.";

/** The facts for a warranty notice: what was measured and falls short of what was promised, with every figure behind it. */
export function printedWarrantyFacts(told: readonly ToldRow[], frame: FactsFrame): PrintedDocument {
  const isMeasured = ({ row }: ToldRow) =>
    row.entries.some(({ column }) => column.kind === "accepted" || column.kind === "year");
  const short = told.filter((each) => isMeasured(each) && each.findings.deviations.length > 0);
  return framed(frame, "Facts for a warranty notice", [
    { kind: "heading", level: 1, text: "What was measured and what was promised" },
    {
      kind: "paragraph",
      text:
        short.length === 0
          ? "Nothing that was measured on the finished field falls short of what was specified, promised or guaranteed."
          : "On the finished field these properties fall short of what was specified, promised or guaranteed.",
    },
    ...short.flatMap((each): readonly PrintedBlock[] => [
      { kind: "heading", level: 2, text: nameOf(each.row) },
      ...list(each.findings.deviations),
      rowTable(each.row),
    ]),
    { kind: "heading", level: 1, text: "What this is not" },
    { kind: "paragraph", text: noCause },
  ]);
}

/** The facts for the closeout report: the register of submittals, then every row with its deviations and gaps. */
export function printedCloseoutFacts(
  told: readonly ToldRow[],
  register: readonly RegisterLine[],
  frame: FactsFrame,
): PrintedDocument {
  const open = register.filter(({ state }) => state.kind !== "closed");
  return framed(frame, "Facts for the closeout report", [
    { kind: "heading", level: 1, text: "Submittals" },
    { kind: "paragraph", text: registerSentence(register) },
    ...list(open.map(({ item, sentence }) => `${item.item}: ${sentence}`)),
    { kind: "heading", level: 1, text: "Promised against measured" },
    {
      kind: "paragraph",
      text:
        told.length === 0
          ? "Nothing was specified, submitted or measured yet."
          : "One part a property and kind of test method; figures by unlike methods stand apart.",
    },
    ...told.flatMap(({ row, findings }): readonly PrintedBlock[] => [
      { kind: "heading", level: 2, text: nameOf(row) },
      rowTable(row),
      ...list([...findings.deviations, ...findings.notes, ...findings.gaps]),
    ]),
    { kind: "heading", level: 1, text: "What this is not" },
    { kind: "paragraph", text: noCause },
  ]);
}
