import { type ActId, type Actor, actRefused } from "#lib/people";
import { explainLock, lockOn, type Procedure } from "#lib/procedure";
import type { ProjectKind } from "./project-documents";

/** What somebody has to be allowed in order to write a kind of document. */
export const actOfKind: Readonly<Record<Exclude<ProjectKind, "procedure" | "scoresheet">, ActId>> = {
  brief: "set-criteria",
  requirements: "set-criteria",
  bid: "enter-bids",
  "sealed-prices": "enter-bids",
  attachment: "keep-papers",
  specification: "set-criteria",
  issue: "set-criteria",
  costing: "level-costs",
  campaign: "keep-papers",
  contract: "keep-papers",
  submittal: "keep-papers",
  delivery: "keep-papers",
  substitution: "keep-papers",
  recommendation: "keep-papers",
  people: "list-people",
  committee: "agree",
  release: "list-people",
};

/** What a kind of document is called at the head of a sentence. */
const names: Readonly<Partial<Record<ProjectKind, string>>> = {
  requirements: "Criteria, limits and weights",
  specification: "The section",
  issue: "A section that is given out",
  brief: "Field, use and conventions of cost",
  "sealed-prices": "Sealed prices",
  bid: "A bid",
  costing: "Levelling and the owner’s figures",
  committee: "What the committee agreed on",
  recommendation: "The owner’s words in the board’s paper",
};

export const kindAtStart = (kind: ProjectKind): string => names[kind] ?? "This";

/** Why somebody can’t change a kind of document now, and which parts of it; "all" for the whole. */
export type Closed = Readonly<{ parts: "all" | readonly string[]; sentence: string }>;

/** What is closed to somebody at the stage that a project has reached, so that a page can say so before anything is typed. */
export function closedKinds(actor: Actor, procedure: Procedure): Readonly<Partial<Record<ProjectKind, Closed>>> {
  const kinds = Object.keys(actOfKind) as (keyof typeof actOfKind)[];
  return Object.fromEntries(
    kinds.flatMap((kind): readonly (readonly [string, Closed])[] => {
      const refused = actRefused(actor, actOfKind[kind]);
      if (refused !== null) return [[kind, { parts: "all", sentence: refused }]];
      const lock = lockOn(procedure, kind);
      return lock === null
        ? []
        : [[kind, { parts: lock.parts, sentence: explainLock(procedure, lock, kindAtStart(kind)) }]];
    }),
  );
}
