import type { ScoreRule } from "#lib/criteria";

/** Where the anchors of a criterion stand: figures in rising or falling order as the rule has them, and their values. */
export type AnchorCells = Readonly<{
  figures: readonly string[];
  values: readonly string[];
  /** All figures and all values as blocks of one row. */
  figureBlock: string;
  valueBlock: string;
  /** The value where no step holds. */
  otherwise: string;
}>;

const clamped = (part: string): string => `MIN(1,MAX(0,${part}))`;
const cell = (cells: readonly string[], index: number): string => cells.at(index) ?? "0";

/** The value of the figure in a cell, 0 to 1. */
export function valueFormula(rule: ScoreRule, x: string, anchors: AnchorCells): string {
  const { figures, figureBlock, values, valueBlock, otherwise } = anchors;
  switch (rule.kind) {
    case "more-is-better":
    case "less-is-better": {
      const [worst, best] = [cell(figures, 0), cell(figures, 1)];
      return clamped(`(${x}-${worst})/(${best}-${worst})`);
    }
    case "target-window": {
      const [nothingBelow, from, to, nothingAbove] = [0, 1, 2, 3].map((index) => cell(figures, index));
      const shoulder = (end: string | undefined, edge: string | undefined) =>
        `IF(${edge}=${end},0,${clamped(`(${x}-${end})/(${edge}-${end})`)})`;
      return `IF(${x}<${from},${shoulder(nothingBelow, from)},IF(${x}<=${to},1,${shoulder(nothingAbove, to)}))`;
    }
    case "steps":
      return rule.counted === "from"
        ? `IF(${x}<${cell(figures, 0)},${otherwise},LOOKUP(${x},${figureBlock},${valueBlock}))`
        : `IF(${x}>${cell(figures, -1)},${otherwise},INDEX(${valueBlock},1,SUMPRODUCT(1*(${figureBlock}<${x}))+1))`;
    case "rating": // straight through its levels, each of which is worth its own figure
    case "piecewise": {
      const place = `MATCH(${x},${figureBlock},1)`;
      const at = (block: string, further: string) => `INDEX(${block},1,${place}${further})`;
      const part = `(${x}-${at(figureBlock, "")})/(${at(figureBlock, "+1")}-${at(figureBlock, "")})`;
      const between = `(1-${part})*${at(valueBlock, "")}+${part}*${at(valueBlock, "+1")}`;
      const above = `IF(${x}>=${cell(figures, -1)},${cell(values, -1)},${between})`;
      return `IF(${x}<=${cell(figures, 0)},${cell(values, 0)},${above})`;
    }
  }
}

/** Cells of one figure: its two ends and the values at them. */
export type EndCells = Readonly<{ low: string; high: string; atLow: string; atHigh: string }>;

/** The least value of all figures between two ends. */
export function leastFormula(rule: ScoreRule, { low, high, atLow, atHigh }: EndCells, anchors: AnchorCells): string {
  const { figureBlock, valueBlock } = anchors;
  if (rule.kind !== "steps" && rule.kind !== "piecewise") return `MIN(${atLow},${atHigh})`;
  const inside = `(${figureBlock}>${low})*(${figureBlock}<${high})`;
  return `MIN(${atLow},${atHigh},1-SUMPRODUCT(MAX(${inside}*(1-${valueBlock}))))`;
}

/** The greatest value of all figures between two ends. */
export function greatestFormula(rule: ScoreRule, ends: EndCells, anchors: AnchorCells): string {
  const { low, high, atLow, atHigh } = ends;
  const { figureBlock, valueBlock, figures } = anchors;
  switch (rule.kind) {
    case "more-is-better":
    case "less-is-better":
    case "rating":
      return `MAX(${atLow},${atHigh})`;
    case "target-window": {
      const nearest = `MIN(MAX(${cell(figures, 1)},${low}),${high})`;
      return valueFormula(rule, nearest, anchors);
    }
    case "steps":
    case "piecewise":
      return `MAX(${atLow},${atHigh},SUMPRODUCT(MAX((${figureBlock}>${low})*(${figureBlock}<${high})*${valueBlock})))`;
  }
}
