import type { RatingLevel } from "#lib/criteria";
import styles from "./level-strip.module.css";

const width = 180;
const height = 44;
const edge = 12;
const base = 32;

/** The levels on a line by what they are worth, a mark for each rating above it, and the agreed value as an upright stroke. */
export function LevelStrip({
  levels,
  chosen,
  agreed,
  name,
}: {
  levels: readonly RatingLevel[];
  /** Ids of the levels that were chosen, one for each evaluator. */
  chosen: readonly string[];
  agreed: number | null;
  name: string;
}) {
  const x = (value: number) => edge + value * (width - 2 * edge);
  const words = levels
    .map(({ id, label }) => ({ label, count: chosen.filter((level) => level === id).length }))
    .filter(({ count }) => count > 0)
    .map(({ label, count }) => `${label} ${count} times`)
    .join(", ");
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className={styles.strip}
      role="img"
      aria-label={`${name}: ${words === "" ? "no rating" : words}`}
    >
      <path className={styles.line} d={`M${x(0)} ${base}H${x(1)}`} />
      {levels.map(({ id, value }) => (
        <path key={id} className={styles.line} d={`M${x(value)} ${base - 3}v6`} />
      ))}
      {levels.flatMap(({ id, value }) =>
        chosen
          .filter((level) => level === id)
          .map((_, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: marks have no name but their place
            <circle key={`${id} ${place}`} className={styles.mark} cx={x(value)} cy={base - 7 - place * 7} r="3" />
          )),
      )}
      {agreed === null ? null : <path className={styles.agreed} d={`M${x(agreed)} ${base - 8}v16`} />}
    </svg>
  );
}
