import { discountedValue, type Measure, type ScoreRule, scoredSpan, valueCurve, valueFunctions } from "#lib/criteria";
import { formatPoints, judgedInWords } from "#lib/evaluation";
import { formatFigure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { capitalised } from "../../../_components/in-words";
import type { JudgedBid } from "./judged-bids";
import { ValueCurve } from "./value-curve";
import styles from "./value-curve.module.css";

/** The corners of the line in words: "70 g scores 0, 90 g scores 100". */
const anchorsInWords = (rule: ScoreRule, measure: Measure, units: UnitSystem): string =>
  valueCurve(rule)
    .map(({ figure, value }) => `${judgedInWords(measure, figure, units)} scores ${formatPoints(value)}`)
    .join(", ");

/** How the figures of one criterion turn into values, with the bids that show one. */
export function CriterionCurve({
  row,
  rule,
  measure,
  name,
  caption,
  bids,
  units,
}: {
  /** The criterion's place among all of them. */
  row: number;
  rule: ScoreRule;
  measure: Measure;
  name: string;
  caption: React.ReactNode;
  bids: readonly JudgedBid[];
  units: UnitSystem;
}) {
  const judged = bids.flatMap(({ evaluated: { letter }, index, criteria }) => {
    const one = criteria[row];
    if (one === undefined) return [];
    const { criterion, asked, counted, spread } = one.score;
    const worthOf = (value: number) => (counted === "at a discount" ? discountedValue(criterion, value) : value);
    return [{ letter, index, figure: one.figure, span: scoredSpan(one.figure, spread), asked, counted, worthOf }];
  });
  const asked = judged.filter((one) => one.asked === "yes");
  const counting = asked.filter(({ counted }) => counted !== "not");
  const lettersOf = (some: typeof judged) => some.map(({ letter }) => letter).join(", ");
  const notes: readonly (readonly [string, typeof judged])[] = [
    ["Below the line, because less proven than asked for", asked.filter(({ counted }) => counted === "at a discount")],
    ["Not on the line, because no figure counts", asked.filter(({ counted }) => counted === "not")],
    ["Not on the line, because it is not asked of them", judged.filter((one) => one.asked === "no")],
    ["Not on the line, because whether it is asked is open", judged.filter((one) => one.asked === "not decided")],
  ];
  return (
    <figure className={styles.multiple}>
      <figcaption>{caption}</figcaption>
      <ValueCurve rule={rule} measure={measure} marks={counting} units={units} name={name} />
      <p className={styles.words}>
        {capitalised(valueFunctions[rule.kind].label)}: {anchorsInWords(rule, measure, units)}.{" "}
        {counting.map(({ letter, figure }) => `${letter} ${formatFigure(figure, units)}`).join("; ")}
        {counting.length === 0 ? "" : "."}
        {notes.map(([why, some]) => (some.length === 0 ? "" : ` ${why}: ${lettersOf(some)}.`)).join("")}
      </p>
    </figure>
  );
}
