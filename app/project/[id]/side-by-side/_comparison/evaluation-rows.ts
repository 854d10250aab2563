import type { CriterionScore, ScoreInterval } from "#lib/criteria";
import type { BidEvaluation, Evaluation } from "#lib/evaluation";
import { explainShortfall } from "#lib/figure";
import { formatInterval, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { markOf } from "./finding-marks";
import { type Cell, emptyCell, type Row } from "./model";

const hundredth = (value: number) => measured("number", 100 * value);

/** A score of 0 to 1 as points of 100, bounds and all. */
const pointsText = ({ low, high }: ScoreInterval, units: UnitSystem): string =>
  `${formatInterval("number", { low: hundredth(low), high: hundredth(high) }, units)} points`;

function criterionCell(bid: string, { status, share, contribution, because }: CriterionScore, units: UnitSystem): Cell {
  return {
    ...emptyCell(bid),
    status,
    text: share > 0 ? pointsText(contribution, units) : status === "meets" ? "gate only" : "",
    lines: because === null ? [] : [explainShortfall(because)],
  };
}

/** How each bid does on each criterion. Every bid is held against the same criteria, so the first bid names them. */
function criterionRows(bids: readonly BidEvaluation[], units: UnitSystem): readonly Row[] {
  const [first] = bids;
  if (first === undefined) return [];
  return first.score.criteria.map(({ criterion, share }, index) => ({
    id: `criterion.${criterion.id}`,
    label: criterion.label,
    under:
      share > 0
        ? `${criterion.gate.kind === "none" ? "" : "Gate, and "}${formatValue("fraction", measured("fraction", share), units)} of all weight.`
        : "Gate; carries no weight.",
    apart: false,
    cells: bids.map(({ id, score }) => {
      const own = score.criteria[index];
      return own === undefined ? emptyCell(id) : criterionCell(id, own, units);
    }),
  }));
}

function placeText(evaluation: Evaluation, bid: string): string {
  const place = evaluation.ranking.places.find((candidate) => candidate.bid === bid)?.place;
  return place === undefined ? "no place: fails a gate" : `place ${place} of ${evaluation.bids.length}`;
}

/** Criterion by criterion, then gates, total and place, then all that was found. */
export function evaluationRows(evaluation: Evaluation, units: UnitSystem): readonly Row[] {
  const { bids } = evaluation;
  const textRow = (id: string, label: string, under: string, text: (bid: BidEvaluation) => string): Row => ({
    id,
    label,
    under,
    apart: false,
    cells: bids.map((bid) => ({ ...emptyCell(bid.id), text: text(bid) })),
  });
  return [
    ...criterionRows(bids, units),
    textRow("gates", "Gates", "All criteria with a limit.", ({ score }) => score.standing),
    textRow("total-score", "Total score", "Of 100 points, with what missing figures leave open.", ({ score }) =>
      score.total === null ? "" : pointsText(score.total, units),
    ),
    textRow("place", "Place", "On the figures shown.", ({ id }) => placeText(evaluation, id)),
    {
      id: "findings",
      label: "Findings",
      under: "What does not go together or needs an answer.",
      apart: false,
      cells: bids.map(({ id, findings }) => {
        const marks = findings.map((finding) => markOf(finding, units));
        return { ...emptyCell(id), text: marks.length === 0 ? "none" : "", marks };
      }),
    },
  ];
}
