import { pluggedPart } from "#lib/document";
import { type BidEvaluation, derivedMeasures, type Project } from "#lib/evaluation";
import { explainShortfall, type Figure, formatFigure, listed } from "#lib/figure";
import { yearInWords } from "#lib/impact";
import { formatMoney, formatReading, type UnitSystem, withCurrencySign } from "#lib/quantity";
import { earlierFacts, levelOf, provenanceFacts } from "./claimed-rows";
import { marksOnFigure } from "./finding-marks";
import { type Cell, emptyCell, type Mark, type Row, type RowHead, type Statement, workedOut } from "./model";
import { numberAndUnit, unitInHead } from "./number-and-unit";

type DerivedMeasureId = (typeof derivedMeasures)[number]["id"];
type Reader = (bid: BidEvaluation) => Figure;

/** What stands for the unit in the head of a row, money in the currency of its figures. */
const unitOf = (figure: Figure, units: UnitSystem): string =>
  withCurrencySign(unitInHead(figure.dimension, units), figure.kind === "unknown" ? "USD" : (figure.currency ?? "USD"));

/** A derived figure as a cell: the figure, or the status and the sentence that say why there is none. */
function figureCell(bid: string, figure: Figure, units: UnitSystem, marks: readonly Mark[] = []): Cell {
  if (figure.kind !== "unknown") {
    const { text, unit } = numberAndUnit(formatFigure(figure, units), figure.dimension, units);
    return { ...emptyCell(bid), statements: workedOut(text, unit), working: figure.working, marks };
  }
  const status = figure.because.kind === "not-comparable" ? "not comparable" : "not shown";
  return { ...emptyCell(bid), status, lines: [explainShortfall(figure.because)], marks };
}

const textCell = (bid: string, text: string): Cell => ({ ...emptyCell(bid), statements: workedOut(text) });

type Head = Omit<RowHead, "unit" | "apart">;

/** Name and note of a measure, as criteria know it. */
function measured(id: DerivedMeasureId): Head {
  const measure = derivedMeasures.find((candidate) => candidate.id === id);
  if (measure === undefined) throw new RangeError(`no measure ${id}`);
  return { id, label: measure.label, under: measure.note };
}

/** The figures of all bids, one dimension, with what was found beside them. */
function figureRow(
  head: Head,
  bids: readonly BidEvaluation[],
  units: UnitSystem,
  read: Reader,
  marksOn: (bid: BidEvaluation) => readonly Mark[] = () => [],
): Row {
  const figures = bids.map((bid) => ({ bid, figure: read(bid) }));
  // a figure that is not known has no currency; another bid's has it
  const first = figures.find(({ figure }) => figure.kind !== "unknown") ?? figures[0];
  return {
    ...head,
    unit: first === undefined ? "" : unitOf(first.figure, units),
    apart: false,
    cells: figures.map(({ bid, figure }) => figureCell(bid.id, figure, units, marksOn(bid))),
  };
}

const weightWords = {
  heavy: "heavy",
  "may-be-heavy": "may be heavy",
  "not-heavy": "not heavy",
  unknown: "",
} as const;

/** The components of the infill as the bids write them, and what they amount to. */
export function infillRows(project: Project, bids: readonly BidEvaluation[], units: UnitSystem): readonly Row[] {
  const row = (head: Head, read: Reader, marksOn?: (bid: BidEvaluation) => readonly Mark[]) =>
    figureRow(head, bids, units, read, marksOn);
  return [
    {
      id: "infill-components",
      label: "Infill as written",
      unit: unitInHead("arealDensity", units),
      under: "Mass per area of each component.",
      apart: false,
      cells: bids.map((bid) => componentsCell(bid, project, units)),
    },
    row(
      measured("infill-mass-per-area"),
      ({ infill }) => infill.totalArealDensity,
      (bid) => marksOnFigure(bid, "infill mass", units),
    ),
    {
      id: "weight-class",
      label: "Weight of the infill",
      unit: "",
      under: "As the trade calls it (common practice, no source).",
      apart: false,
      cells: bids.map(({ id, infill }) => textCell(id, weightWords[infill.weightClass])),
    },
    row(measured("stabilising-mass"), ({ infill }) => infill.stabilisingMass),
    row(measured("mineral-share"), ({ infill }) => infill.mineralShare),
    row(measured("submerged-mass"), ({ infill }) => infill.submergedMass),
    row(measured("float-prone-share"), ({ infill }) => infill.floatProneShare),
    row(
      measured("infill-depth"),
      ({ infill }) => infill.depth,
      (bid) => marksOnFigure(bid, "infill depth", units),
    ),
    row(measured("free-pile"), ({ infill }) => infill.freePile),
    row(
      { id: "fill-ratio", label: "Infill depth as a share of the pile", under: "Infill depth ÷ pile height." },
      ({ infill }) => infill.fillRatio,
    ),
    row(
      { id: "truck-loads", label: "Truck loads of infill", under: "At a usual payload." },
      ({ infill }) => infill.truckLoads,
    ),
  ];
}

function componentsCell(bid: BidEvaluation, project: Project, units: UnitSystem): Cell {
  const entered = project.bids.find(({ id }) => id === bid.id)?.infill.components ?? [];
  if (entered.length === 0)
    return { ...emptyCell(bid.id), status: "not shown", lines: ["The bid states no component of the infill."] };
  const statements = entered.map(
    (component): Statement => ({
      id: component.id,
      ...numberAndUnit(formatReading("arealDensity", component.arealDensity.reading, units), "arealDensity", units),
      qualifier: bid.infill.components.find(({ id }) => id === component.id)?.label ?? component.material,
      level: levelOf(component.evidence),
      facts: [
        { label: "As entered", text: component.arealDensity.asEntered },
        { label: "Bulk density as entered", text: component.bulkDensity?.asEntered ?? "" },
        ...provenanceFacts(component),
        ...earlierFacts(component.id, bid.answers),
      ].filter(({ text }) => text !== ""),
    }),
  );
  return { ...emptyCell(bid.id), statements };
}

/** How hard the surfaces start and may become, by the method of the requirement. */
export function impactRows(bids: readonly BidEvaluation[], units: UnitSystem): readonly Row[] {
  const row = (head: Head, read: Reader) => figureRow(head, bids, units, read);
  return [
    row(measured("impact-level-as-new"), ({ hardness }) => hardness.asNew),
    row(measured("impact-level-at-horizon"), ({ hardness }) => hardness.atHorizon),
    {
      id: "year-at-limit",
      label: "First year likely at the limit",
      unit: "",
      under: "The likely level of the hardness outlook.",
      apart: false,
      cells: bids.map(yearAtLimitCell),
    },
    row(measured("depth-margin"), ({ hardness }) => hardness.depthMargin.figure),
  ];
}

function yearAtLimitCell({ id, hardness: { outlook, sentences } }: BidEvaluation): Cell {
  if (outlook.kind === "unknown")
    return {
      ...emptyCell(id),
      status: outlook.because.kind === "not-comparable" ? "not comparable" : "not shown",
      lines: sentences,
    };
  return { ...textCell(id, yearInWords(outlook.firstYearLikelyAbove)), lines: sentences };
}

function pluggedCell({ id, cost }: BidEvaluation): Cell {
  const part = pluggedPart(cost);
  if (part === null || cost.presentValue.kind === "unknown") return textCell(id, "nothing");
  const money = formatMoney(part.presentValue, cost.presentValue.currency ?? "USD");
  return { ...textCell(id, money), lines: [`For ${listed(part.items)}.`] };
}

export function costRows(bids: readonly BidEvaluation[], units: UnitSystem): readonly Row[] {
  const row = (head: Head, read: Reader, marksOn?: (bid: BidEvaluation) => readonly Mark[]) =>
    figureRow(head, bids, units, read, marksOn);
  return [
    row(
      { id: "price-as-bid", label: "Price as bid", under: "The bidder’s own prices at the base date." },
      ({ cost }) => cost.priceAsBid,
      (bid) => marksOnFigure(bid, "price", units),
    ),
    row(measured("price-at-base-date"), ({ cost }) => cost.priceAtBaseDate),
    row(measured("present-value"), ({ cost }) => cost.presentValue),
    {
      id: "plugs",
      label: "Of this, put in by the owner",
      unit: "",
      under: "What stands in for what the bid leaves out, over the study.",
      apart: false,
      cells: bids.map(pluggedCell),
    },
    row(measured("equivalent-annual-cost"), ({ cost }) => cost.equivalentAnnualCost),
    row(measured("annual-cost-per-area"), ({ cost }) => cost.perAreaYear),
    row(measured("cost-per-hour"), ({ cost }) => cost.perHour),
  ];
}
