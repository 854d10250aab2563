import type { AskedOfSystems } from "../../_components/specification-values";

/** What can be asked of systems, with the words in which the text asks it. */
export type SystemQuestions = Readonly<{
  measures: readonly Readonly<{ id: string; label: string; limit: string }>[];
  clauses: readonly Readonly<{ id: string; label: string; asked: string }>[];
  bids: readonly Readonly<{ id: string; letter: string }>[];
}>;

export const askedOf = ({ measures, clauses, bids }: SystemQuestions): AskedOfSystems => ({
  measures: measures.map(({ id }) => id),
  clauses: clauses.map(({ id }) => id),
  bids: bids.map(({ id }) => id),
});
