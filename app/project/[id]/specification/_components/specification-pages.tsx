import { SubPages } from "../../_components/sub-pages";

/** The pages about the specification, in the order in which an architect works. */
const pages = [
  { slug: "draft", path: "", title: "Draft" },
  { slug: "clauses", path: "/clauses", title: "Clauses" },
  { slug: "section", path: "/section", title: "Choices and blanks" },
  { slug: "language", path: "/language", title: "Neutral language" },
  { slug: "competition", path: "/competition", title: "Competition" },
  { slug: "versions", path: "/versions", title: "Versions" },
] as const;

/** The way between the pages about the specification. */
export function SpecificationPages({ project, here }: { project: string; here: (typeof pages)[number]["slug"] }) {
  return (
    <SubPages
      label="Pages about the specification"
      base={`/project/${project}/specification`}
      pages={pages}
      here={here}
    />
  );
}
