import type { ProjectKind } from "../project-documents";
import { breach, type Rule } from "./model";

/** Documents that only an act writes: their times, names and seals are the server’s and never typed. */
const actedOnly: Readonly<Partial<Record<ProjectKind, string>>> = {
  procedure: "The stages of a project",
  scoresheet: "A scoresheet",
  "sealed-prices": "Sealed prices",
};

/** What the server composes is taken from nobody else, and is never taken away. */
export const wayRefusal: Rule = ({ way, moves }) => {
  for (const { kind, action } of moves) {
    const what = actedOnly[kind];
    if (what === undefined) continue;
    if (action === "remove" || action === "restore") return breach(`${what} can’t be taken out of a project.`);
    if (way === "form") return breach(`${what} can’t be written as a document; the page of its own does it.`);
  }
  return null;
};
