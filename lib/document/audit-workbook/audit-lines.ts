import { type Costing, countedLines, type LevelledLine, type PriceLine, resolvedLines } from "#lib/cost";
import type { BidEvaluation, Evaluation, Project } from "#lib/evaluation";
import { intervalOfFigure, type Origin, type Working } from "#lib/figure";
import type { In } from "#lib/quantity";

/** Who is costed: a bid by its letter, or the owner's own alternative. The key stands in cells and in formulas. */
export type Costed = Readonly<{
  key: string;
  label: string;
  system: string;
  kind: "bid" | "base-alternative";
  /** Hours of use a year where they are not those of the brief. */
  ownHours: number | null;
}>;

/** A price line of another bid that a median is taken over. */
export type MedianPart = Readonly<{ ref: string; line: PriceLine }>;

/** A price line as it counts: in the levelled cost, in the bid as it was handed in, or in both. */
export type AuditLine = Readonly<{
  /** "A:carpet-and-infill". */
  ref: string;
  costed: string;
  line: PriceLine;
  from: string;
  levelled: boolean;
  inBid: boolean;
  note: string;
  /** What a median is worked out from, and whether the quantity is the owner's own; null for every other price. */
  median: Readonly<{ parts: readonly MedianPart[]; ownQuantity: boolean }> | null;
}>;

/** A price line that is entered and counts nowhere. */
export type IdleLine = Readonly<{ costed: string; line: PriceLine; because: string }>;

export type AuditLines = Readonly<{
  costed: readonly Costed[];
  lines: readonly AuditLine[];
  idle: readonly IdleLine[];
}>;

const alternativeKey = "BASE";

/** Everything that is priced, in the order of the bids; the owner's own alternative comes last. */
export function auditLines(project: Project, evaluation: Evaluation): AuditLines {
  const area = intervalOfFigure(evaluation.area)?.low;
  if (area === undefined) throw new RangeError("a field without an area: its schema let it through");
  const sets = evaluation.bids.map((bid) => bidSet(bid, project, area));
  const inBid = new Map(
    sets.flatMap(({ id, rows }) => rows.filter((row) => row.inBid).map((row) => [`${id} ${row.line.id}`, row])),
  );
  const partOf = (from: Origin): readonly MedianPart[] => {
    const found = from.kind === "price-line" ? inBid.get(`${from.bid} ${from.line}`) : undefined;
    return found === undefined ? [] : [{ ref: found.ref, line: found.line }];
  };
  const lines = sets.flatMap(({ rows }) =>
    rows.map(({ medianOf, ownQuantity, ...row }): AuditLine => {
      const parts = medianOf === null ? [] : medianOf.inputs.flatMap(({ from }) => partOf(from));
      const isWhole = medianOf !== null && parts.length === medianOf.inputs.length;
      return { ...row, median: isWhole ? { parts, ownQuantity } : null };
    }),
  );
  const alternative = evaluation.baseAlternative;
  return {
    costed: [
      ...evaluation.bids.map(
        ({ letter, bidder, system }): Costed => ({ key: letter, label: bidder, system, kind: "bid", ownHours: null }),
      ),
      ...(alternative === null
        ? []
        : [
            {
              ...{ key: alternativeKey, label: alternative.label, system: "", kind: "base-alternative" as const },
              ownHours: project.costing.baseAlternative?.hoursPerYear?.value ?? null,
            },
          ]),
    ],
    lines: [...lines, ...(alternative?.lines ?? []).map(alternativeLine)],
    idle: [
      ...sets.flatMap(({ letter, idle }) => idle.map((one) => ({ costed: letter, ...one }))),
      ...(alternative?.leftOut ?? []).map((one) => ({ costed: alternativeKey, ...one })),
    ],
  };
}

const alternativeLine = (line: PriceLine): AuditLine => ({
  ref: `${alternativeKey}:${line.id}`,
  costed: alternativeKey,
  line,
  from: "The owner’s own alternative",
  levelled: true,
  inBid: false,
  note: line.note,
  median: null,
});

type Row = Omit<AuditLine, "median"> & Readonly<{ medianOf: Working | null; ownQuantity: boolean }>;

/**
 * The lines of one bid. Where levelling or a link leaves the bidder's line another than it was handed in, both stand:
 * one counts in the levelled cost, the other in the cost as bid.
 */
function bidSet(bid: BidEvaluation, { bids, brief, costing }: Project, area: In<"m²">) {
  const { id, letter, cost } = bid;
  const prices = bids.find((one) => one.id === id)?.prices ?? [];
  const entered = resolvedLines(countedLines(prices, brief.money).counted, area);
  const takesOfLevelled = entered.some(isShareOfLevelled);
  const rows = cost.lines.map((levelled): Row => {
    const same = levelled.origin.kind === "bid" && entered.some((line) => isSame(line, levelled.line));
    return {
      ...{ ref: `${letter}:${levelled.line.id}`, costed: letter, line: levelled.line },
      ...{ levelled: true, inBid: same, from: fromOf(levelled, bid), note: noteOf(levelled, bid) },
      medianOf: medianOf(levelled, bid),
      ownQuantity: ownQuantity(levelled, id, costing),
    };
  });
  const isWanted = (line: PriceLine) => line.givenBy === "bid" || takesOfLevelled;
  const others = entered.filter((line) => isWanted(line) && !rows.some((row) => row.inBid && row.line.id === line.id));
  const asHandedIn = others.map(
    (line): Row => ({
      ...{ ref: `${letter}:${line.id}:as-bid`, costed: letter, line, levelled: false, inBid: true },
      ...{ from: "Bid, as handed in", note: "Counts in the cost as bid only.", medianOf: null, ownQuantity: false },
    }),
  );
  return { id, letter, rows: [...rows, ...asHandedIn], idle: cost.leftOut };
}

const amountsOf = (line: PriceLine) => [
  line.amount,
  ...(line.kind === "replacement-chain" && line.removal !== null ? [line.removal] : []),
];

const isShareOfLevelled = (line: PriceLine): boolean =>
  amountsOf(line).some((amount) => amount.kind === "share" && amount.of === "levelled-bid");

/** Whether levelling left a line as it was. The sum of a share of the levelled bid is never that of the bid alone. */
const isSame = (entered: PriceLine, levelled: PriceLine): boolean =>
  entered.id === levelled.id && !isShareOfLevelled(entered) && JSON.stringify(entered) === JSON.stringify(levelled);

function fromOf({ origin }: LevelledLine, { cost }: BidEvaluation): string {
  switch (origin.kind) {
    case "bid":
      return "Bid";
    case "plug":
      return origin.by === "median" ? "Plug: median of the other bids" : "Plug: the owner’s figure";
    case "link": {
      const row = cost.links.find(({ link }) => link === origin.link);
      const how = row?.kind === "stated" ? "stated" : "computed";
      return `Technical link, ${how}: ${row?.label ?? origin.link}`;
    }
  }
}

const inWords = ({ formula, inputs }: Working): string =>
  `${formula}. ${inputs.map(({ label, text }) => `${label}: ${text}`).join("; ")}.`;

/** The line's own note, and how a link or a median came to its figure. */
function noteOf({ line, origin }: LevelledLine, { cost }: BidEvaluation): string {
  const links = cost.links.flatMap((row) =>
    row.kind === "computed" && row.line === line.id ? [`${row.label}: ${inWords(row.working)}`] : [],
  );
  const scope = cost.scope.flatMap(({ outcome }) =>
    origin.kind === "plug" && outcome.kind === "plugged" && outcome.line === line.id && outcome.figure?.kind === "known"
      ? [inWords(outcome.figure.working), ...outcome.figure.working.assumptions]
      : [],
  );
  return [line.note, ...links, ...scope].filter((text) => text !== "").join(" ");
}

function medianOf({ line, origin }: LevelledLine, { cost }: BidEvaluation): Working | null {
  if (origin.kind !== "plug" || origin.by !== "median") return null;
  for (const { outcome } of cost.scope)
    if (outcome.kind === "plugged" && outcome.line === line.id && outcome.figure?.kind === "known")
      return outcome.figure.working;
  return null;
}

function ownQuantity({ origin }: LevelledLine, bid: string, { levelling }: Costing): boolean {
  if (origin.kind !== "plug") return false;
  const entry = levelling.find((one) => one.bid === bid && one.item === origin.item);
  return entry?.plug.kind === "median" && entry.plug.quantity !== null;
}
