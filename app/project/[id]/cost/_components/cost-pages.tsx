import Link from "next/link";
import styles from "./cost-pages.module.css";

/** The pages about money, in the order in which a reader wants them. */
const pages = [
  { slug: "totals", path: "", title: "Totals" },
  { slug: "owners-figures", path: "/owners-figures", title: "Owner’s figures" },
  { slug: "two-bids", path: "/two-bids", title: "Two bids" },
  { slug: "uncertainty", path: "/uncertainty", title: "Uncertainty" },
  { slug: "conventions", path: "/conventions", title: "How cost is counted" },
] as const;

/** The way between the pages about money. */
export function CostPages({ project, here }: { project: string; here: (typeof pages)[number]["slug"] }) {
  return (
    <nav aria-label="Pages about cost" className={`${styles.pages} screen-only`}>
      <ul>
        {pages.map(({ slug, path, title }) => (
          <li key={slug}>
            {slug === here ? (
              <span aria-current="page">{title}</span>
            ) : (
              <Link href={`/project/${project}/cost${path}`}>{title}</Link>
            )}
          </li>
        ))}
      </ul>
    </nav>
  );
}
