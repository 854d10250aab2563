import { SubPages } from "../../_components/sub-pages";

/** The pages about submittals, in the order in which a representative works. */
const pages = [
  { slug: "register", path: "", title: "Register" },
  { slug: "deliveries", path: "/deliveries", title: "Deliveries and placing" },
  { slug: "substitutions", path: "/substitutions", title: "Substitution requests" },
  { slug: "award", path: "/award", title: "What was awarded" },
] as const;

/** The way between the pages about submittals. */
export function SubmittalPages({ project, here }: { project: string; here: (typeof pages)[number]["slug"] | "line" }) {
  return <SubPages label="Pages about submittals" base={`/project/${project}/submittals`} pages={pages} here={here} />;
}
