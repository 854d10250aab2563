import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { type CostPart, cashFlows, costCategories, type PriceLine } from "#lib/cost";
import { auditWorkbook } from "#lib/document";
import { type Evaluation, evaluate, type Project } from "#lib/evaluation";
import { type Figure, intervalOfFigure } from "#lib/figure";
import {
  attackedProject,
  demonstrationProject,
  drawnProject,
  everythingProject,
  hostileTexts,
  type MoneyText,
  workedExample,
} from "../document/audit-projects";
import { type ReadSheet, readBack } from "../document/read-back";
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

/** Dollars: a hundredth of a cent. */
const close = 1e-4;

const partWords: Readonly<Record<CostPart, string>> = {
  price: "price",
  "first-cost": "first cost",
  renewal: "renewals",
  "removal-at-renewal": "removal at renewals",
  "removal-at-study-end": "removal at the end of the study",
  residual: "value left at the end of the study",
};

function numbersIn(sheet: ReadSheet, row: number, from: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => {
    const value = sheet.at(row, from + index);
    return typeof value === "number" ? value : Number.NaN;
  });
}

/** What differs between two rows of dollars, as a sentence for each; empty where they agree. */
const differences = (what: string, sheet: readonly number[], app: readonly number[]): readonly string[] =>
  app.flatMap((dollars, index) => {
    const shown = sheet[index] ?? Number.NaN;
    return Math.abs(shown - dollars) <= close ? [] : [`${what}, year ${index}: sheet ${shown}, app ${dollars}`];
  });

const dollarsOf = (figure: Figure): number | null => {
  const low = intervalOfFigure(figure)?.low;
  return low === undefined ? null : low / 100;
};

/** The lines that count for each bid and for the owner’s alternative, under the key of the workbook. */
const costedOf = ({ bids, baseAlternative }: Evaluation) => [
  ...bids.map(({ letter, cost }) => ({ key: letter, cost, lines: cost.lines.map(({ line }) => line) })),
  ...(baseAlternative === null ? [] : [{ key: "BASE", cost: baseAlternative, lines: baseAlternative.lines }]),
];

function flowDifferences(flows: ReadSheet, project: Project, evaluation: Evaluation): readonly string[] {
  const { money } = project.brief;
  const area = intervalOfFigure(evaluation.area)?.low;
  if (area === undefined || evaluation.area.dimension !== "area") throw new Error("an area");
  const years = money.studyPeriod.years + 1;
  const first = (flows.rows[3] ?? []).indexOf(0) + 1;
  const rows = new Map<string, number>();
  flows.rows.forEach((row, index) => {
    if (row?.[8] === 1) rows.set(`${row[0]}|${row[3]}`, index + 1);
  });
  const wanted = costedOf(evaluation).flatMap(({ key, lines }) =>
    cashFlows(lines as readonly PriceLine[], { area, conventions: money }).flows.map(({ line, flow }) => ({
      name: `${key}:${line.id}|${partWords[flow.part]}`,
      dollars: flow.stream.map((cents) => cents / 100),
    })),
  );
  const spare = [...rows.keys()].filter((name) => !wanted.some((one) => one.name === name));
  return [
    ...spare.map((name) => `${name} is in the workbook only`),
    ...wanted.flatMap(({ name, dollars }) => {
      const row = rows.get(name);
      if (row === undefined) return dollars.every((one) => one === 0) ? [] : [`${name} is missing`];
      return differences(name, numbersIn(flows, row, first, years), dollars);
    }),
  ];
}

function totalDifferences(totals: ReadSheet, flows: ReadSheet, evaluation: Evaluation): readonly string[] {
  const rows = (from: string) => totals.rowOf(from);
  const found: string[] = [];
  const hold = (what: string, shown: unknown, app: number | null) => {
    const agrees = app === null ? shown === "unknown" : typeof shown === "number" && Math.abs(shown - app) <= close;
    if (!agrees) found.push(`${what}: sheet ${shown}, app ${app}`);
  };
  costedOf(evaluation).forEach(({ key, cost }, index) => {
    const column = index + 2;
    const at = (label: string, below = 0) => totals.at(rows(label) + below, column);
    const isKnown = cost.presentValue.kind !== "unknown";
    const say = (what: string) => `${key} ${what}`;
    hold(say("present value"), at("Present value"), dollarsOf(cost.presentValue));
    for (const { category, presentValue } of cost.categories)
      hold(say(category), at(`of it ${costCategories[category].label}`), isKnown ? presentValue / 100 : null);
    hold(say("price"), at("Price at the base date"), dollarsOf(cost.priceAtBaseDate));
    hold(say("annual"), at("Equivalent annual cost"), dollarsOf(cost.equivalentAnnualCost));
    const hour = dollarsOf(cost.perHour);
    hold(say("hour"), at("Cost of an hour of use"), hour === null ? null : hour * 3600);
    const perArea = dollarsOf(cost.perAreaYear);
    hold(say("m²"), at("Annual cost of a square metre"), perArea);
    hold(say("ft²"), at("Annual cost of a square foot"), perArea === null ? null : perArea * 0.09290304);
    for (const [place, { rate, presentValue }] of cost.atRates.entries())
      hold(say(`at ${rate}`), at("Annual cost of a square metre", place + 1), dollarsOf(presentValue));
    const isLow = at("Levelled: with plugs, links and the owner’s estimates");
    if ((cost.presentValue.kind === "at-least") !== (isLow === "at least") && isKnown)
      found.push(`${key}: the sheet says “${isLow}”, the app ${cost.presentValue.kind}`);
    const row = flows.rowOf(`Sum ${key}, levelled`);
    const sums = cost.yearly.map((cents) => cents / 100);
    found.push(...differences(say("sum"), numbersIn(flows, row, 11, sums.length), sums));
    if (!("asBid" in cost)) return;
    hold(say("as bid"), at("Present value, as bid"), dollarsOf(cost.asBid.presentValue));
    hold(say("price as bid"), at("Price at the base date, as bid"), dollarsOf(cost.asBid.priceAtBaseDate));
    hold(say("annual as bid"), at("Equivalent annual cost, as bid"), dollarsOf(cost.asBid.equivalentAnnualCost));
    for (const [place, cell] of [
      "Present value, app",
      "Price at the base date, app",
      "Present value as bid, app",
    ].entries())
      if (
        at(cell, 1) !==
        (dollarsOf([cost.presentValue, cost.priceAtBaseDate, cost.asBid.presentValue][place] as Figure) === null
          ? "–"
          : 0)
      )
        found.push(`${key}: “${cell}” differs by ${at(cell, 1)}`);
  });
  return found;
}

function scoreDifferences(scores: ReadSheet, evaluation: Evaluation): readonly string[] {
  const head = scores.rowOf("Each bid on each criterion") + 1;
  const column = (heading: string) => scores.columnOf(head, heading);
  const found: string[] = [];
  const hold = (what: string, shown: unknown, app: number | null, empty: string) => {
    const agrees = app === null ? shown === empty : typeof shown === "number" && Math.abs(shown - app) <= 1e-8;
    if (!agrees) found.push(`${what}: sheet ${shown}, app ${app}`);
  };
  let row = head;
  for (const { letter, score } of evaluation.bids)
    for (const { criterion, value, contribution, share } of score.criteria) {
      row += 1;
      const name = `${letter} ${criterion.id}`;
      if (scores.at(row, 1) !== letter || scores.at(row, 2) !== criterion.label)
        found.push(`${name} is not in row ${row}`);
      hold(`${name} share`, scores.at(row, column("Share of all weights")), share, "");
      for (const part of ["low", "likely", "high"] as const) {
        const none = value === null ? "–" : "open";
        hold(`${name} value ${part}`, scores.at(row, column(`Value, ${part}`)), value?.[part] ?? null, none);
        const points = value === null ? null : contribution[part];
        hold(
          `${name} points ${part}`,
          scores.at(row, column(`Points, ${part}`)),
          points === null ? null : 100 * points,
          none,
        );
      }
    }
  const totalHead = scores.rows.findIndex((cells, index) => index > head && cells?.[0] === "Totals") + 2;
  evaluation.bids.forEach(({ letter, score }, index) => {
    const at = (heading: string) => scores.at(totalHead + 1 + index, scores.columnOf(totalHead, heading));
    for (const part of ["low", "likely", "high"] as const) {
      const total = score.total?.[part] ?? null;
      hold(`${letter} total ${part}`, at(`Points, ${part}`), total === null ? null : 100 * total, "open");
    }
    hold(`${letter} coverage`, at("Share of weights on figures that count"), score.coverage, "");
  });
  return found;
}

const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

/** The workbook with other values typed into cells of “Inputs”, as a person would type them. */
function retyped(bytes: Uint8Array, values: Readonly<Record<string, string | number>>): Uint8Array {
  const inputs = readBack(bytes)("Inputs");
  const parts = unzipSync(bytes);
  const part = "xl/worksheets/sheet2.xml";
  let xml = strFromU8(parts[part] ?? new Uint8Array());
  for (const [label, value] of Object.entries(values)) {
    const address = `B${inputs.rowOf(label)}`;
    const pattern = new RegExp(`<c r="${address}"( s="\\d+")?[^>]*?(/>|>.*?</c>)`);
    if (!pattern.test(xml)) throw new Error(`no cell ${address}`);
    xml = xml.replace(pattern, (_, style = "") =>
      typeof value === "number"
        ? `<c r="${address}"${style}><v>${value}</v></c>`
        : `<c r="${address}"${style} t="inlineStr"><is><t>${escaped(value)}</t></is></c>`,
    );
  }
  return zipSync({ ...parts, [part]: strToU8(xml) });
}

const evaluations = Object.fromEntries(
  Object.entries(projects).map(([name, project]) => [name, evaluate(project)]),
) as Record<Name, Evaluation>;

/** The conventions of “delayed”, typed over those of “everything”. */
const typedOver = {
  Money: "current",
  "When yearly costs fall": "mid-year",
  "General inflation a year": 0.025,
  "Real rate a year, as given": 0.04,
  "Start of service, years after": 2,
  "Study period, years": 18,
};

describe.skipIf(!hasLibreOffice)("the audit workbook, worked out by LibreOffice", () => {
  const names = Object.keys(projects) as Name[];
  let results: Readonly<Record<string, Uint8Array>> = {};
  const book = (name: Name | "changed" | "attacked") => readBack(results[name] ?? new Uint8Array());

  beforeAll(async () => {
    const made: Record<string, Uint8Array> = {};
    for (const name of names) made[name] = await auditWorkbook(projects[name], evaluations[name], null);
    const changed = retyped(made.everything ?? new Uint8Array(), typedOver);
    const attacked = await auditWorkbook(attackedProject(), evaluate(attackedProject()), null);
    results = recalculated({ ...made, changed, attacked });
  }, 300_000);

  for (const name of names) {
    test(`gives the flows, totals and scores of the app: ${name}`, () => {
      const sheet = book(name);
      const flows = sheet("Yearly flows");
      expect(flowDifferences(flows, projects[name], evaluations[name])).toEqual([]);
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
