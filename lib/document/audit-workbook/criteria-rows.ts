import type { Criterion } from "#lib/criteria";
import { valueFunctions } from "#lib/criteria";
import { askedOfInWords, gateInWords } from "#lib/evaluation";
import { withCurrencySign } from "#lib/quantity";
import { columnName, type Laid } from "./laid";
import { anchorsOf, inCriterionUnit, unitOfCriterion } from "./score-figures";
import type { AnchorCells } from "./value-formulas";

const headings = [
  "Criterion",
  "What is judged",
  "Why it is asked",
  "Unit",
  "How it scores",
  "Weight",
  "Share of all weights",
  "Gate",
  "Weakest evidence that counts",
  "If no figure counts",
  "Part of its points taken off, where less proven",
  "Value where no step holds",
  "",
];
const anchorColumn = headings.length + 1;

export const worstWord = "counts as the worst";
const shortfallWords = {
  "keep-open": "stays open",
  "ask-first": "stays open and is asked about",
  discount: "less proven counts at a discount, else stays open",
  "counts-as-worst": worstWord,
  "gate-fails": "fails the gate, points stay open",
} as const;

/** Where a criterion stands on the sheet “Scores”. */
export type CriterionPlace = Readonly<{ share: string; shortfall: string; discount: string; anchors: AnchorCells }>;

/** Criteria with weights and anchors: two rows each, the figures above and their values below. */
export function criteriaRows(laid: Laid, head: number, criteria: readonly Criterion[]): readonly CriterionPlace[] {
  const most = Math.max(0, ...criteria.map(({ valueFunction }) => anchorsOf(valueFunction).length));
  laid.headings(head, [...headings, ...Array.from({ length: most }, (_, index) => `Anchor ${index + 1}`)]);
  const first = head + 1;
  const last = head + Math.max(1, 2 * criteria.length);
  return criteria.map((criterion, index) =>
    criterionRows(laid, first + 2 * index, criterion, `$F$${first}:$F$${last}`),
  );
}

function criterionRows(laid: Laid, row: number, criterion: Criterion, weights: string): CriterionPlace {
  const { label, measure, reason, askedOf, valueFunction, gate, weight, evidence } = criterion;
  const unit = unitOfCriterion(criterion);
  const scores = valueFunction.kind === "none" ? "gate only" : valueFunctions[valueFunction.kind].label;
  const counted =
    valueFunction.kind === "steps"
      ? `, counted ${valueFunction.counted === "from" ? "from the figure up" : "up to the figure"}`
      : "";
  const asked = askedOf.kind === "every-bid" ? "" : ` ${askedOfInWords(askedOf, "us")}`;
  const texts = [
    label,
    measure.label,
    `${reason}${asked}`,
    withCurrencySign(unit, measure.currency ?? "USD"),
    `${scores}${counted}`,
  ];
  for (const [column, text] of texts.entries()) laid.text(row, column + 1, text);
  laid.number(row, 6, weight, "inputNumber");
  laid.formula(row, 7, `IF(SUM(${weights})=0,0,$F${row}/SUM(${weights}))`, "workedShare");
  laid.text(row, 8, gate.kind === "none" ? "no gate" : gateInWords(gate, measure, "us"));
  laid.text(row, 9, evidence.least.label);
  laid.text(row, 10, shortfallWords[evidence.shortfall], "inputText");
  if (evidence.shortfall === "discount") laid.number(row, 11, evidence.discount, "inputNumber");
  if (valueFunction.kind === "steps") laid.number(row, 12, valueFunction.otherwise, "inputNumber");
  if (valueFunction.kind !== "none") {
    laid.text(row, 13, "figure", "asked");
    laid.text(row + 1, 13, "value", "asked");
  }
  const anchors = anchorsOf(valueFunction);
  const values = valuesOf(valueFunction);
  for (const [index, { value }] of anchors.entries()) {
    laid.number(row, anchorColumn + index, inCriterionUnit(criterion, value, unit), "inputFigure");
    const worth = values[index];
    if (typeof worth === "number") laid.number(row + 1, anchorColumn + index, worth, "inputNumber");
    else laid.text(row + 1, anchorColumn + index, worth ?? "");
  }
  const at = (line: number) => (index: number) => `$${columnName(anchorColumn + index)}$${line}`;
  const block = (line: number) => `${at(line)(0)}:${at(line)(Math.max(0, anchors.length - 1))}`;
  return {
    share: `$G$${row}`,
    shortfall: `$J$${row}`,
    discount: `$K$${row}`,
    anchors: {
      figures: anchors.map((_, index) => at(row)(index)),
      values: anchors.map((_, index) => at(row + 1)(index)),
      figureBlock: block(row),
      valueBlock: block(row + 1),
      otherwise: `$L$${row}`,
    },
  };
}

/** What each anchor is worth: a number that can be changed, or words where the kind of function fixes it. */
function valuesOf(rule: Criterion["valueFunction"]): readonly (number | string)[] {
  const [nothing, full] = ["scores nothing", "scores in full"];
  switch (rule.kind) {
    case "none":
      return [];
    case "more-is-better":
    case "less-is-better":
      return [nothing, full];
    case "target-window":
      return [`${nothing} below`, `${full} from here`, `${full} to here`, `${nothing} above`];
    case "steps":
      return rule.steps.map(({ value }) => value);
    case "piecewise":
      return rule.knots.map(({ value }) => value);
    case "rating":
      return rule.levels.map(({ value }) => value);
  }
}
