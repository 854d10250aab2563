import { inSentence, methodOf } from "#lib/claim";
import type { CompletenessRule } from "./model";

export const methodWithoutEdition: CompletenessRule = {
  id: "method-without-edition",
  title: "Method without an edition",
  advice: "Name the edition, or write “current edition” where the one in force on the day of the bids is meant.",
  find: ({ requirements }) =>
    requirements.flatMap(({ id, label, method, edition }) =>
      method === null || edition.text !== ""
        ? []
        : [
            {
              requirements: [id],
              sentence: `${methodOf(method).designation} for ${inSentence(label)} has no edition.`,
            },
          ],
    ),
};
