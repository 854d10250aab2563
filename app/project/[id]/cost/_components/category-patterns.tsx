import type { CostCategory } from "#lib/cost";
import styles from "./cost-bars.module.css";

const size = 8;

/** A pattern of its own for each category, in ink, so that no colour has to be told apart. */
const drawings: Readonly<Record<CostCategory, React.ReactNode>> = {
  investment: <rect className={styles.solid} width={size} height={size} />,
  "owners-addition": null,
  "operation-and-maintenance": <path className={styles.stroke} d="M-2 10 10 -2M-2 2 2 -2M6 10 10 6" />,
  testing: <path className={styles.solid} d="M0 0h4v4h-4zM4 4h4v4h-4z" />,
  replacement: <path className={styles.stroke} d="M2 0V8M6 0V8" />,
  "removal-and-disposal": <path className={styles.stroke} d="M0 0 8 8M8 0 0 8" />,
  residual: <path className={styles.stroke} d="M0 4H8" />,
};

const patternId = (drawing: string, category: CostCategory) => `${drawing}-${category}`;

export const categoryFill = (drawing: string, category: CostCategory) => `url(#${patternId(drawing, category)})`;

/** One pattern per category. `drawing` keeps the drawings of one page apart. */
export function CategoryPatterns({ drawing: id }: { drawing: string }) {
  return (
    <defs>
      {Object.entries(drawings).map(([category, drawing]) => (
        <pattern
          key={category}
          id={patternId(id, category as CostCategory)}
          width={size}
          height={size}
          patternUnits="userSpaceOnUse"
        >
          <rect className={styles.paper} width={size} height={size} />
          {drawing}
        </pattern>
      ))}
    </defs>
  );
}
