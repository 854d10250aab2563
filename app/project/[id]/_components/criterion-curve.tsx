import { type ScoreRule, valueCurve, valueFunctions } from "#lib/criteria";
import { formatPoints } from "#lib/evaluation";
import { formatFigure } from "#lib/figure";
import { type DimensionName, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { capitalised } from "../../../_components/in-words";
import type { JudgedBid } from "./judged-bids";
import { ValueCurve } from "./value-curve";
import styles from "./value-curve.module.css";

/** The corners of the line in words: "70 g scores 0, 90 g scores 100". */
const anchorsInWords = (rule: ScoreRule, dimension: DimensionName, units: UnitSystem): string =>
  valueCurve(rule)
    .map(
      ({ figure, value }) =>
        `${formatValue(dimension, measured(dimension, figure), units)} scores ${formatPoints(value)}`,
    )
    .join(", ");

/** How the figures of one criterion turn into values, with the bids that show one. */
export function CriterionCurve({
  row,
  rule,
  dimension,
  name,
  caption,
  bids,
  units,
}: {
  /** The criterion's place among all of them. */
  row: number;
  rule: ScoreRule;
  dimension: DimensionName;
  name: string;
  caption: React.ReactNode;
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  const judged = bids.flatMap(({ evaluated: { letter }, index, criteria }) => {
    const one = criteria[row];
    return one === undefined ? [] : [{ letter, index, figure: one.figure, counts: one.score.because === null }];
  });
  const counting = judged.filter(({ counts }) => counts);
  const others = judged.filter(({ counts }) => !counts).map(({ letter }) => letter);
  return (
    <figure className={styles.multiple}>
      <figcaption>{caption}</figcaption>
      <ValueCurve rule={rule} dimension={dimension} marks={counting} units={units} name={name} />
      <p className={styles.words}>
        {capitalised(valueFunctions[rule.kind].label)}: {anchorsInWords(rule, dimension, units)}.{" "}
        {counting.map(({ letter, figure }) => `${letter} ${formatFigure(figure, units)}`).join("; ")}
        {counting.length === 0 ? "" : "."}
        {others.length === 0 ? "" : ` Not on the line, because no figure counts: ${others.join(", ")}.`}
      </p>
    </figure>
  );
}
