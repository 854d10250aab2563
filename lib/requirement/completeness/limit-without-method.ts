import { inSentence, propertyOf } from "#lib/claim";
import type { Requirement } from "../model";
import type { CompletenessRule } from "./model";

/** Whether a figure of the subject comes from a test at all: a price or a number of years needs none. */
function isTested({ subject }: Requirement): boolean {
  if (subject === null) return false;
  if (subject.property !== undefined) return propertyOf(subject.property).methods.length > 0;
  return subject.dimension === "impactLevel";
}

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
