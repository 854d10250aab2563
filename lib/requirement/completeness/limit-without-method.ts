import { inSentence } from "#lib/claim";
import { isTested } from "./checked-on-the-work";
import type { CompletenessRule } from "./model";

export const limitWithoutMethod: CompletenessRule = {
  id: "limit-without-method",
  title: "Limit without a test method",
  advice: "Name the method, since figures by unlike methods can’t be held against one limit.",
  find: ({ requirements }) =>
    requirements
      .filter((each) => each.limit !== null && each.method === null && isTested(each))
      .map(({ id, label }) => ({
        requirements: [id],
        sentence: `The limit for ${inSentence(label)} names no test method.`,
      })),
};
