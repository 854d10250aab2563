import type { CriterionScore } from "#lib/criteria";
import {
  askedOfInWords,
  type BidEvaluation,
  type Evaluation,
  formatPointSpan,
  formatShare,
  gateInWords,
  shortfallSentences,
  totalWorking,
} from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { marksOf } from "./finding-marks";
import { type Cell, emptyCell, type Row, workedOut } from "./model";

/** A figure that counts meets something only where a limit is set. */
function criterionCell(bid: string, score: CriterionScore): Cell {
  const { criterion, status, share, contribution } = score;
  return {
    ...emptyCell(bid),
    status: status === "meets" && criterion.gate.kind === "none" ? null : status,
    statements: share > 0 ? workedOut(formatPointSpan(contribution), " points") : [],
    lines: shortfallSentences(score),
  };
}

/** What a criterion asks and what it weighs: "At least 8 years. 5 % of all weight." */
function rule({ criterion: { askedOf, gate, measure }, share }: CriterionScore, units: UnitSystem): string {
  const words = gate.kind === "none" ? "" : gateInWords(gate, measure, units);
  const limit = words === "" ? [] : [`${words.charAt(0).toUpperCase()}${words.slice(1)}.`];
  const asked = askedOfInWords(askedOf, units);
  return [
    ...limit,
    ...(asked === "" ? [] : [asked]),
    share > 0 ? `${formatShare(share)} of all weight.` : "Carries no weight.",
  ].join(" ");
}

/** How each bid does on each criterion. Every bid is held against the same criteria, so the first bid names them. */
function criterionRows(bids: readonly BidEvaluation[], units: UnitSystem): readonly Row[] {
  const [first] = bids;
  if (first === undefined) return [];
  return first.score.criteria.map((named, index) => ({
    id: `criterion.${named.criterion.id}`,
    label: named.criterion.label,
    unit: named.share > 0 ? "points" : "",
    under: rule(named, units),
    apart: false,
    cells: bids.map(({ id, score }) => {
      const own = score.criteria[index];
      return own === undefined ? emptyCell(id) : criterionCell(id, own);
    }),
  }));
}

function placeText({ ranking, bids }: Evaluation, bid: string): string {
  const place = ranking.places.find((candidate) => candidate.bid === bid)?.place;
  return place === undefined ? "no place: fails a gate" : `place ${place} of ${bids.length}`;
}

function totalCell({ id, score }: BidEvaluation): Cell {
  const { total } = score;
  if (total === null) return { ...emptyCell(id), statements: workedOut("no criterion carries weight") };
  return {
    ...emptyCell(id),
    statements: workedOut(formatPointSpan(total), " points"),
    working: totalWorking(score),
  };
}

/** Criterion by criterion, then gates, total and place, then all that was found. */
export function evaluationRows(evaluation: Evaluation, units: UnitSystem): readonly Row[] {
  const { bids } = evaluation;
  const row = (id: string, label: string, under: string, cell: (bid: BidEvaluation) => Cell): Row => ({
    id,
    label,
    unit: "",
    under,
    apart: false,
    cells: bids.map(cell),
  });
  return [
    ...criterionRows(bids, units),
    row("gates", "Gates", "All criteria with a limit.", ({ id, score }) => ({
      ...emptyCell(id),
      statements: workedOut(score.standing),
    })),
    {
      ...row("total-score", "Total score", "Of 100, with what missing figures leave open.", totalCell),
      unit: "points",
    },
    row("place", "Place", "On the figures shown.", ({ id }) => ({
      ...emptyCell(id),
      statements: workedOut(placeText(evaluation, id)),
    })),
    row("findings", "Findings", "What does not go together or needs an answer.", (bid) => {
      const marks = marksOf(bid, () => true, units);
      return { ...emptyCell(bid.id), statements: workedOut(marks.length === 0 ? "none" : ""), marks };
    }),
  ];
}
