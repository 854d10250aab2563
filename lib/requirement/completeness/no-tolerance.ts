import { inSentence } from "#lib/claim";
import type { CompletenessRule } from "./model";

export const noTolerance: CompletenessRule = {
  id: "no-tolerance",
  title: "No tolerance",
  advice: "Say whether the limit holds at each point or for the average, or how far one reading may stray.",
  find: ({ requirements }) =>
    requirements
      .filter(
        ({ limit, tolerance, holdsAt, acceptance }) =>
          limit !== null && acceptance !== "" && tolerance === null && holdsAt === "not-stated",
      )
      .map(({ id, label }) => ({
        requirements: [id],
        sentence: `The test of ${inSentence(label)} on the field takes many readings, and the text does not say which of them the limit holds for.`,
      })),
};
