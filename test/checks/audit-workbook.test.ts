import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { auditWorkbook } from "#lib/document";
import { type Evaluation, evaluate, type Project } from "#lib/evaluation";
import {
  close,
  costedOf,
  differences,
  dollarsOf,
  flowDifferences,
  levellingDifferences,
  numbersIn,
  scoreDifferences,
  totalDifferences,
} from "../document/audit-differences";
import {
  attackedProject,
  demonstrationProject,
  drawnProject,
  everythingProject,
  everythingText,
  hostileTexts,
  type MoneyText,
  projectOf,
  workedExample,
} from "../document/audit-projects";
import { readBack } from "../document/read-back";
import { hasLibreOffice, recalculated } from "../libre-office";

// The outside check is LibreOffice: it works the workbook out by its own arithmetic, and every figure has to be the app’s.

const delayed: MoneyText = {
  ...{ timing: "mid-year", money: "current", inflation: "2.5 %", realRate: "4 %", nominalRate: "" },
  ...{ serviceStart: "2 years", studyPeriod: "18 years" },
};
const nominal: MoneyText = {
  ...{ timing: "mid-year", money: "current", inflation: "3 %", realRate: "", nominalRate: "6.5 %" },
  ...{ studyPeriod: "27 years", serviceStart: "1 years" },
};

const projects = {
  demonstration: demonstrationProject(),
  worked: workedExample(),
  everything: everythingProject(),
  delayed: everythingProject(delayed),
  drawn: drawnProject(nominal, 7),
  "drawn-real": drawnProject({ money: "constant", realRate: "-1 %", studyPeriod: "11 years" }, 11),
} satisfies Record<string, Project>;
type Name = keyof typeof projects;

const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

/** A cell by the sheet, the first cell of its row, and its column: a letter or the heading in a row that has it. */
type Typed = Readonly<{ sheet: "Inputs" | "Scores"; row: string; column: string; value: string | number }>;

const parts = { Inputs: "xl/worksheets/sheet2.xml", Scores: "xl/worksheets/sheet8.xml" } as const;

/** The workbook with other values typed into cells, as a person would type them. */
function retyped(bytes: Uint8Array, cells: readonly Typed[]): Uint8Array {
  const held = unzipSync(bytes);
  for (const { sheet, row, column, value } of cells) {
    const read = readBack(bytes)(sheet);
    const heading = read.rows.findIndex((cells) => cells?.includes(column)) + 1;
    const letters = column.length === 1 ? column : columnLetters(read.columnOf(heading, column));
    const address = `${letters}${read.rowOf(row)}`;
    const xml = strFromU8(held[parts[sheet]] ?? new Uint8Array());
    const pattern = new RegExp(`<c r="${address}"( s="\\d+")?[^>]*?(/>|>.*?</c>)`);
    if (!pattern.test(xml)) throw new Error(`no cell ${address} on “${sheet}”`);
    const typed = xml.replace(pattern, (_, style = "") =>
      typeof value === "number"
        ? `<c r="${address}"${style}><v>${value}</v></c>`
        : `<c r="${address}"${style} t="inlineStr"><is><t>${escaped(value)}</t></is></c>`,
    );
    held[parts[sheet]] = strToU8(typed);
  }
  return zipSync(held);
}

const columnLetters = (column: number): string =>
  column <= 26
    ? String.fromCharCode(64 + column)
    : columnLetters(Math.floor((column - 1) / 26)) + columnLetters(((column - 1) % 26) + 1);

const evaluations = Object.fromEntries(
  Object.entries(projects).map(([name, project]) => [name, evaluate(project)]),
) as Record<Name, Evaluation>;

/** The conventions of “delayed”, typed over those of “everything”. */
const conventionsTyped: readonly Typed[] = [
  ["Money", "current"],
  ["When yearly costs fall", "mid-year"],
  ["General inflation a year", 0.025],
  ["Real rate a year, as given", 0.04],
  ["Start of service, years after", 2],
  ["Study period, years", 18],
].map(([row, value]) => ({ sheet: "Inputs", row: String(row), column: "B", value: value ?? "" }));

const onLine = (row: string, column: string, value: string | number): Typed => ({
  sheet: "Inputs",
  row,
  column,
  value,
});

/** Prices, lives, a quantity, a share, an area and a weight typed over those of “everything”. */
const figuresTyped: readonly Typed[] = [
  { sheet: "Inputs", row: "Area of the field, ft²", column: "B", value: 72_500 },
  { sheet: "Inputs", row: "Hours of use a year", column: "B", value: 1650 },
  { sheet: "Scores", row: "cost", column: "F", value: 80 },
  onLine("A:carpet", "Price, or share of a sum", 5.25),
  onLine("A:carpet", "Life, years", 6),
  onLine("A:carpet", "Saved at a renewal", 0.15),
  onLine("A:carpet", "Growth a year over inflation", 0.02),
  onLine("A:grooming-own", "Quantity", 140),
  onLine("A:tax", "Price, or share of a sum", 0.07),
  onLine("A:deep-clean", "Years left out", "6"),
  onLine("C:training", "Price, or share of a sum", 4100),
];

/** The same changes made in the app. */
function withFiguresTyped(): Project {
  const file = everythingText();
  const change = (id: string, changes: object) => (line: object) =>
    "id" in line && line.id === id ? { ...line, ...changes } : line;
  const bids = file.bids.map((bid) => {
    const prices =
      bid.letter === "C"
        ? bid.prices.map(change("training", { amount: { kind: "lump-sum", price: "$4,100" } }))
        : bid.prices;
    if (bid.letter !== "A") return { ...bid, prices };
    const carpet = {
      amount: { kind: "per-area", price: "$5.25/ft²" },
      life: "6 years",
      renewalSaving: "15 %",
      escalation: "2 %",
    };
    return {
      ...bid,
      prices: prices
        .map(change("carpet", carpet))
        .map(change("grooming-own", { amount: { kind: "per-unit", quantity: "140 h", unitPrice: "$48/h" } }))
        .map(change("tax", { amount: { kind: "share", share: "7 %", of: "accepted-bid" } }))
        .map(change("deep-clean", { except: "6" })),
    };
  });
  const weighed = file.requirements.criteria.map((one) => (one.id === "cost" ? { ...one, weight: "80" } : one));
  return projectOf({
    ...file,
    bids,
    brief: {
      ...file.brief,
      field: { ...file.brief.field, area: "72,500 ft²" },
      use: { ...file.brief.use, hoursPerYear: "1,650 h/year" },
    },
    requirements: { ...file.requirements, criteria: weighed },
    // links stand in the workbook with the quantity that the app worked out, so none is at work here
    costing: { ...file.costing, links: [] },
  });
}

describe.skipIf(!hasLibreOffice)("the audit workbook, worked out by LibreOffice", () => {
  const names = Object.keys(projects) as Name[];
  let results: Readonly<Record<string, Uint8Array>> = {};
  const book = (name: Name | "changed" | "figures" | "attacked") => readBack(results[name] ?? new Uint8Array());

  beforeAll(async () => {
    const made: Record<string, Uint8Array> = {};
    for (const name of names) made[name] = await auditWorkbook(projects[name], evaluations[name], null);
    const changed = retyped(made.everything ?? new Uint8Array(), conventionsTyped);
    const file = everythingText();
    const unlinked = projectOf({ ...file, costing: { ...file.costing, links: [] } });
    const figures = retyped(await auditWorkbook(unlinked, evaluate(unlinked), null), figuresTyped);
    const attacked = await auditWorkbook(attackedProject(), evaluate(attackedProject()), null);
    results = recalculated({ ...made, changed, figures, attacked });
  }, 300_000);

  for (const name of names) {
    test(`gives the flows, levelling, totals and scores of the app: ${name}`, () => {
      const sheet = book(name);
      const flows = sheet("Yearly flows");
      expect(flowDifferences(flows, projects[name], evaluations[name])).toEqual([]);
      expect(levellingDifferences(sheet("Levelling"), evaluations[name])).toEqual([]);
      expect(totalDifferences(sheet("Totals"), flows, evaluations[name])).toEqual([]);
      expect(scoreDifferences(sheet("Scores"), evaluations[name])).toEqual([]);
    });

    test(`has no cell that ends in an error: ${name}`, () => {
      const sheet = book(name);
      const all = ["Read me", "Inputs", "Levelling", "Yearly flows", "Lives", "Discounting", "Totals", "Scores"];
      const errors = all.flatMap((one) =>
        sheet(one).rows.flatMap((row, index) =>
          (row ?? []).flatMap((cell) =>
            typeof cell === "string" && /^(error|unread|#|Err:)/.test(cell) ? [`${one} ${index + 1}: ${cell}`] : [],
          ),
        ),
      );
      expect(errors).toEqual([]);
    });
  }

  test("follows when conventions are typed over: it is then the app under those conventions", () => {
    const flows = book("changed")("Yearly flows");
    const totals = book("changed")("Totals");
    const app = costedOf(evaluations.delayed);
    const found = app.flatMap(({ key, cost }, index) => {
      const sums = cost.yearly.map((cents) => cents / 100);
      const presentValue = dollarsOf(cost.presentValue);
      const shown = totals.at(totals.rowOf("Present value"), index + 2);
      return [
        ...differences(key, numbersIn(flows, flows.rowOf(`Sum ${key}, levelled`), 11, 21), [...sums, 0, 0]),
        ...(presentValue === null || Math.abs(Number(shown) - presentValue) <= close
          ? []
          : [`${key}: ${shown}, ${presentValue}`]),
      ];
    });
    expect(found).toEqual([]);
    expect(scoreDifferences(book("changed")("Scores"), evaluations.delayed)).toEqual([]);
  });

  test("follows when prices, lives, an area and a weight are typed over: it is then the app with those figures", () => {
    const project = withFiguresTyped();
    const evaluation = evaluate(project);
    const sheet = book("figures");
    const own = evaluate(projects.everything).bids[0]?.cost.presentValue;
    expect(own).not.toEqual(evaluation.bids[0]?.cost.presentValue);
    const flows = sheet("Yearly flows");
    expect(flowDifferences(flows, project, evaluation)).toEqual([]);
    const apart = totalDifferences(sheet("Totals"), flows, evaluation);
    expect(apart.filter((text) => !text.includes(", app” differs by"))).toEqual([]);
    // the figures of the app that the file was made with stand beside the new ones, and the difference is shown
    expect(apart.length).toBeGreaterThan(0);
    expect(scoreDifferences(sheet("Scores"), evaluation)).toEqual([]);
  });

  test("shows text from outside as text and works out nothing in it", () => {
    const inputs = book("attacked")("Inputs").rows.flatMap((row) => row ?? []);
    // a tab is shown as a blank by some programs
    for (const { shown } of hostileTexts) expect(inputs.map((cell) => String(cell).trim())).toContain(shown.trim());
    const totals = book("attacked")("Totals");
    const own = book("demonstration")("Totals");
    const row = own.rowOf("Present value");
    expect(totals.rows[row - 1]).toEqual(own.rows[row - 1]);
  });

  /** @source derived from discount factors, independently of this code; method of 10 CFR 436.16 (test/checks/cost-example.ts) */
  test("comes to the totals of the worked example", () => {
    const totals = book("worked")("Totals");
    const shown = (label: string) =>
      [2, 3, 4].map((column) => Number(totals.at(totals.rowOf(label), column)).toFixed(2));
    expect(shown("Present value")).toEqual(["1154583.33", "1254676.92", "1466070.03"]);
    expect(shown("Price at the base date")).toEqual(["658700.00", "792000.00", "846750.00"]);
    expect(shown("Equivalent annual cost")).toEqual(["77606.14", "84334.00", "98542.93"]);
    expect(shown("Cost of an hour of use")).toEqual(["43.11", "46.85", "54.75"]);
    expect(shown("Present value at 0 % real")).toEqual(["1321808.31", "1406233.31", "1671623.31"]);
    expect(shown("Present value at 7 % real")).toEqual(["1003712.80", "1115543.75", "1280074.40"]);
  });
});
