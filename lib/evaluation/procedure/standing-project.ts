import { type Committee, openSheetsOf, type Scoresheet, startingCommittee } from "#lib/committee";
import type { Criterion } from "#lib/criteria";
import type { Person } from "#lib/people";
import { type Procedure, startingProcedure } from "#lib/procedure";
import type { StandingDocuments } from "./project-documents";

/** What rules and acts ask of a project, read off its documents; what nobody has written yet is as in a new project. */
export const peopleIn = (standing: StandingDocuments): readonly Person[] => standing("people")[0]?.model.people ?? [];

export const procedureIn = (standing: StandingDocuments): Procedure =>
  standing("procedure")[0]?.model ?? startingProcedure;

export const scoresheetsIn = (standing: StandingDocuments): readonly Scoresheet[] =>
  standing("scoresheet").map(({ model }) => model);

export const committeeIn = (standing: StandingDocuments): Committee => ({
  ...(standing("committee")[0]?.model ?? startingCommittee),
  sheets: openSheetsOf(scoresheetsIn(standing)),
});

export const criteriaIn = (standing: StandingDocuments): readonly Criterion[] =>
  standing("requirements")[0]?.model.criteria ?? [];
