import { inSentence } from "#lib/claim";
import { isCheckedOnTheWork } from "./checked-on-the-work";
import type { CompletenessRule } from "./model";

export const noAcceptanceTest: CompletenessRule = {
  id: "no-acceptance-test",
  title: "No test at completion",
  advice: "Say who checks it on the finished work, how and when, or that the report with the bid is enough.",
  find: ({ requirements }) =>
    requirements
      .filter((each) => isCheckedOnTheWork(each) && each.acceptance === "")
      .map(({ id, label }) => ({
        requirements: [id],
        sentence: `Nothing says how ${inSentence(label)} is checked at completion.`,
      })),
};
