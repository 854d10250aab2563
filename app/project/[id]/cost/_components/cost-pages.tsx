import { SubPages } from "../../_components/sub-pages";

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
  return <SubPages label="Pages about cost" base={`/project/${project}/cost`} pages={pages} here={here} />;
}
