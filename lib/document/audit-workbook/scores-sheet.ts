import type { WriteSheet } from "hucre/xlsx";
import type { CriterionScore, ScoreRule } from "#lib/criteria";
import { type BidEvaluation, criteriaOf, type Evaluation, type Project } from "#lib/evaluation";
import { type CriterionPlace, criteriaRows, worstWord } from "./criteria-rows";
import type { InputPlaces } from "./inputs-sheet";
import { Laid } from "./laid";
import { type JudgedFigure, judgedFigure, unitOfCriterion } from "./score-figures";
import { openEnd } from "./styles";
import type { TotalPlaces } from "./totals-sheet";
import { type EndCells, greatestFormula, leastFormula, valueFormula } from "./value-formulas";
import { fifteenDigits } from "./written-amount";

const scoresSheet = "Scores";
const criteriaHead = 4;

const scoreHeadings = [
  "Bid",
  "Criterion",
  "Figure, lower end",
  "Figure, upper end",
  "Unit",
  "Part of its points that counts",
  "Why not",
  "Where the figure comes from",
  "Lower end, as it counts",
  "Upper end, as it counts",
  "Likely figure",
  "Value at the lower end",
  "Value at the upper end",
  "Value, low",
  "Value, likely",
  "Value, high",
  "Share of all weights",
  "Points, low",
  "Points, likely",
  "Points, high",
  "Gate, as the app has it",
  "Asked of this bid (yes, no, open)",
  "Worst value there is",
  "Best value there is",
];
const totalHeadings = [
  "Bid",
  "Standing, as the app has it",
  "Points, low",
  "Points, likely",
  "Points, high",
  "Share of weights on figures that count",
  "Points, low, app",
  "Points, likely, app",
  "Points, high, app",
];

/** What stands where no value can be given. */
const openWord = "open";

type Setting = Readonly<{ project: Project; evaluation: Evaluation; inputs: InputPlaces; totals: TotalPlaces }>;

/** Weights, anchors, values and points by formula; figures that come from costs refer to the totals. */
export function scoresPage(setting: Setting): WriteSheet {
  const laid = new Laid(scoresSheet);
  const { project, evaluation } = setting;
  const criteria = criteriaOf(project);
  laid.text(1, 1, "Scores", "title");
  laid.text(
    2,
    1,
    "Values run from 0 to 1 on the owner’s anchors, points from 0 to 100. A gate comes first, and no points make up for failing it.",
    "note",
  );
  laid.text(criteriaHead - 1, 1, "Criteria", "section");
  const places = criteriaRows(laid, criteriaHead, criteria);
  const scoreHead = criteriaHead + 2 * criteria.length + 3;
  const scores = evaluation.bids.flatMap((bid) =>
    bid.score.criteria.map((score, index) => ({ bid, score, place: places[index] })),
  );
  const first = scoreHead + 1;
  const last = scoreHead + Math.max(1, scores.length);
  const totalHead = last + 3;
  laid.text(scoreHead - 1, 1, "Each bid on each criterion", "section");
  laid.headings(scoreHead, scoreHeadings);
  for (const [index, { bid, score, place }] of scores.entries())
    if (place !== undefined) scoreRow(laid, first + index, { bid, score, place, setting });
  laid.text(totalHead - 1, 1, "Totals", "section");
  laid.headings(totalHead, totalHeadings);
  for (const [index, bid] of evaluation.bids.entries()) totalRow(laid, totalHead + 1 + index, bid, { first, last });
  return laid.sheet({
    widths: [14, 30, 30, 16, 26, 12, 30, 34, 20, 24, 14, 14, 14, 16, 16, 16, 16, 12, 12, 12, 30, 20, 12, 12],
    frozen: { rows: 2, columns: 2 },
  });
}

type ScoreSetting = Readonly<{ bid: BidEvaluation; score: CriterionScore; place: CriterionPlace; setting: Setting }>;

function scoreRow(laid: Laid, row: number, { bid, score, place, setting }: ScoreSetting): void {
  const { criterion } = score;
  const figure = judgedFigure(setting.project, setting.evaluation.area, bid, score);
  laid.text(row, 1, bid.letter);
  laid.text(row, 2, criterion.label);
  laid.text(row, 5, unitOfCriterion(criterion));
  figureCells(laid, row, bid.letter, figure, setting, place.discount);
  laid.text(row, 7, figure.because);
  laid.text(row, 8, figure.source);
  laid.formula(row, 9, `IF($F${row}>0,$C${row},-${openEnd})`, "workedFigure");
  laid.formula(row, 10, `IF($F${row}>0,$D${row},${openEnd})`, "workedFigure");
  laid.formula(row, 11, likelyFormula(`$I${row}`, `$J${row}`), "workedFigure");
  laid.formula(row, 17, place.share, "workedShare");
  laid.text(row, 21, gateWords(score));
  laid.text(row, 22, askedWords[score.asked], "inputText");
  const rule = criterion.valueFunction;
  if (rule.kind === "none") {
    for (const column of [12, 13, 14, 15, 16, 18, 19, 20, 23, 24]) laid.text(row, column, "–");
    return;
  }
  const { anchors } = place;
  const ends = { low: `$I${row}`, high: `$J${row}`, atLow: `$L${row}`, atHigh: `$M${row}` };
  laid.formula(row, 12, valueFormula(rule, ends.low, anchors), "workedValue");
  laid.formula(row, 13, valueFormula(rule, ends.high, anchors), "workedValue");
  valueCells(laid, row, { rule, place, ends });
  for (const [column, value] of [
    [18, "N"],
    [20, "P"],
  ] as const)
    laid.formula(row, column, `100*$Q${row}*$${value}${row}`, "workedPoints");
  laid.formula(row, 19, `IF(ISNUMBER($O${row}),100*$Q${row}*$O${row},"${openWord}")`, "workedPoints");
}

type ValueSetting = Readonly<{ rule: ScoreRule; place: CriterionPlace; ends: EndCells }>;

/** The least, likely and greatest value: in full, less what a weaker proof takes off, or all there is where nothing is asked. */
function valueCells(laid: Laid, row: number, { rule, place, ends }: ValueSetting): void {
  const { anchors, shortfall } = place;
  const [counts, asked, worst, best] = ["F", "V", "W", "X"].map((column) => `$${column}${row}`);
  const isWorst = `AND(${counts}=0,${shortfall}="${worstWord}")`;
  const lessened = (value: string) =>
    `IF(AND(${counts}>0,${counts}<1),${worst}+${counts}*(${value}-${worst}),${value})`;
  const likely = lessened(valueFormula(rule, `$K${row}`, anchors));
  const shown = `IF(${counts}>0,${likely},IF(${isWorst},${worst},"${openWord}"))`;
  const greatest = `IF(${isWorst},${worst},${lessened(greatestFormula(rule, ends, anchors))})`;
  const least = lessened(leastFormula(rule, ends, anchors));
  laid.formula(row, 14, `IF(${asked}="no",${best},${least})`, "workedValue");
  laid.formula(row, 15, `IF(${asked}="no",${best},IF(${asked}="${openWord}","${openWord}",${shown}))`, "workedValue");
  laid.formula(row, 16, `IF(${asked}="yes",${greatest},${best})`, "workedValue");
  const all = { low: `-${openEnd}`, high: `${openEnd}` };
  const atEnds = {
    atLow: valueFormula(rule, all.low, anchors),
    atHigh: valueFormula(rule, all.high, anchors),
  };
  laid.formula(row, 23, leastFormula(rule, { ...all, ...atEnds }, anchors), "workedValue");
  laid.formula(row, 24, greatestFormula(rule, { ...all, ...atEnds }, anchors), "workedValue");
}

const askedWords = { yes: "yes", no: "no", "not decided": openWord } as const;

/** The middle of a range, the bound of a figure that is open on one side. */
const likelyFormula = (low: string, high: string): string =>
  `IF(${high}>=${openEnd},${low},IF(${low}<=-${openEnd},${high},(${low}+${high})/2))`;

function figureCells(
  laid: Laid,
  row: number,
  letter: string,
  { from, counts }: JudgedFigure,
  { inputs, totals }: Setting,
  discount: string,
): void {
  switch (from.kind) {
    case "unknown":
      for (const column of [3, 4]) laid.empty(row, column, "inputFigure");
      laid.number(row, 6, 0, "inputYear");
      return;
    case "typed":
      laid.number(row, 3, from.low ?? -openEnd, "inputFigure");
      laid.number(row, 4, from.high ?? openEnd, "inputFigure");
      if (counts === "at a discount") laid.formula(row, 6, `1-${discount}`, "workedValue");
      else laid.number(row, 6, counts === "in full" ? 1 : 0, "inputYear");
      return;
    case "total": {
      const total = totals.of(letter, from.total);
      const converted = from.factor === 1 ? total : `IF(ISNUMBER(${total}),${total}*${from.factor},${total})`;
      laid.formula(row, 3, converted, "workedFigure");
      laid.formula(row, 4, `IF(${inputs.costed(letter, "open")}>0,${openEnd},$C${row})`, "workedFigure");
      // a price binds the bidder, so its evidence always counts: only a cost that nobody knows does not
      laid.formula(row, 6, `IF(ISNUMBER($C${row}),1,0)`, "workedYear");
    }
  }
}

function gateWords({ gate, criterion, status }: CriterionScore): string {
  if (criterion.gate.kind === "none") return "no gate";
  return gate.kind === "not-decided" ? "not decided" : status;
}

function totalRow(
  laid: Laid,
  row: number,
  { letter, score }: BidEvaluation,
  { first, last }: Readonly<{ first: number; last: number }>,
): void {
  laid.text(row, 1, letter);
  laid.text(row, 2, score.standing);
  const block = (column: string) => `$${column}$${first}:$${column}$${last}`;
  const sum = (column: string) => `SUMIFS(${block(column)},${block("A")},$A${row})`;
  const whereWeighed = (formula: string) =>
    `IF(SUMIFS(${block("Q")},${block("A")},$A${row})=0,"nothing weighs",${formula})`;
  const open = `SUMPRODUCT((${block("A")}=$A${row})*(${block("Q")}>0)*(1-ISNUMBER(${block("O")})))>0`;
  laid.formula(row, 3, whereWeighed(sum("R")), "workedPoints");
  laid.formula(row, 4, whereWeighed(`IF(${open},"${openWord}",${sum("S")})`), "workedPoints");
  laid.formula(row, 5, whereWeighed(sum("T")), "workedPoints");
  const shareWhere = (condition: string) => `SUMIFS(${block("Q")},${block("A")},$A${row},${condition})`;
  const inFull = shareWhere(`${block("F")},1,${block("V")},"yes"`);
  laid.formula(row, 6, `${inFull}+${shareWhere(`${block("V")},"no"`)}`, "workedShare");
  for (const [index, part] of (["low", "likely", "high"] as const).entries()) {
    const points = score.total?.[part] ?? null;
    if (points === null) laid.text(row, 7 + index, score.total === null ? "nothing weighs" : openWord);
    else laid.number(row, 7 + index, fifteenDigits(points * 100), "givenMoney");
  }
}
