import { amountCents, type CostPart, cashFlows, costCategories, type PriceLine } from "#lib/cost";
import type { Evaluation, Project } from "#lib/evaluation";
import { type Figure, intervalOfFigure } from "#lib/figure";
import type { ReadSheet } from "./read-back";

/** Dollars: a hundredth of a cent. */
export const close = 1e-4;

const partWords: Readonly<Record<CostPart, string>> = {
  price: "price",
  "first-cost": "first cost",
  renewal: "renewals",
  "removal-at-renewal": "removal at renewals",
  "removal-at-study-end": "removal at the end of the study",
  residual: "value left at the end of the study",
};

export function numbersIn(sheet: ReadSheet, row: number, from: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => {
    const value = sheet.at(row, from + index);
    return typeof value === "number" ? value : Number.NaN;
  });
}

/** What differs between two rows of dollars, as a sentence for each; empty where they agree. */
export const differences = (what: string, sheet: readonly number[], app: readonly number[]): readonly string[] =>
  app.flatMap((dollars, index) => {
    const shown = sheet[index] ?? Number.NaN;
    return Math.abs(shown - dollars) <= close ? [] : [`${what}, year ${index}: sheet ${shown}, app ${dollars}`];
  });

export const dollarsOf = (figure: Figure): number | null => {
  const low = intervalOfFigure(figure)?.low;
  return low === undefined ? null : low / 100;
};

/** The lines that count for each bid and for the owner’s alternative, under the key of the workbook. */
export const costedOf = ({ bids, baseAlternative }: Evaluation) => [
  ...bids.map(({ letter, cost }) => ({ key: letter, cost, lines: cost.lines.map(({ line }) => line) })),
  ...(baseAlternative === null ? [] : [{ key: "BASE", cost: baseAlternative, lines: baseAlternative.lines }]),
];

/** Where the sheet and the app part, in sentences. */
export function flowDifferences(flows: ReadSheet, project: Project, evaluation: Evaluation): readonly string[] {
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

/** Where the sheet and the app part, in sentences. */
export function totalDifferences(totals: ReadSheet, flows: ReadSheet, evaluation: Evaluation): readonly string[] {
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

/** Where the sheet and the app part, in sentences. */
export function scoreDifferences(scores: ReadSheet, evaluation: Evaluation): readonly string[] {
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

/** Where the sheet and the app part, in sentences. */
export function levellingDifferences(levelling: ReadSheet, { area, bids }: Evaluation): readonly string[] {
  const squareMetres = area.kind === "known" ? area.value : null;
  if (squareMetres === null) throw new Error("an area");
  const found: string[] = [];
  const hold = (what: string, shown: unknown, app: number | null) => {
    if (app !== null && !(typeof shown === "number" && Math.abs(shown - app) <= close))
      found.push(`${what}: sheet ${shown}, app ${app}`);
  };
  for (const { letter, cost } of bids) {
    const amounts = levelling.columnOf(4, `Bid ${letter}: amount at the base date`);
    const sums = (label: string) => [0, 1].map((further) => levelling.at(levelling.rowOf(label), amounts + further));
    const parts = [
      "The bidder’s prices, in the levelled cost",
      "The owner’s estimates on lines of the bid",
      "Plugs",
      "Technical links",
    ];
    const added = parts
      .map(sums)
      .reduce((sum, pair) => sum.map((one, index) => Number(one) + Number(pair[index])), [0, 0]);
    const [price, presentValue] = sums("Levelled");
    hold(`${letter} price`, price, dollarsOf(cost.priceAtBaseDate));
    hold(`${letter} present value`, presentValue, dollarsOf(cost.presentValue));
    hold(`${letter} price by parts`, added[0], Number(price));
    hold(`${letter} present value by parts`, added[1], Number(presentValue));
    const [asBidPrice, asBid] = sums("The bidder’s own prices, as bid");
    hold(`${letter} price as bid`, asBidPrice, dollarsOf(cost.asBid.priceAtBaseDate));
    hold(`${letter} as bid`, asBid, dollarsOf(cost.asBid.presentValue));
    for (const { label, outcome } of cost.scope) {
      const shown = levelling.at(levelling.rowOf(label), amounts);
      if (outcome.kind === "open" && shown !== "open") found.push(`${letter} ${label}: sheet ${shown}, app open`);
      if (outcome.kind !== "plugged" && outcome.kind !== "in-line") continue;
      const counted = cost.lines.find(({ line }) => line.id === outcome.line);
      if (counted !== undefined)
        hold(`${letter} ${label}`, shown, amountCents(counted.line.amount, squareMetres) / 100);
    }
  }
  return found;
}
