import { inSentence } from "#lib/claim";
import { isCheckedOnTheWork } from "./checked-on-the-work";
import type { CompletenessRule } from "./model";

export const noRemedy: CompletenessRule = {
  id: "no-remedy",
  title: "No remedy",
  advice: "Say what happens when it is missed: groom, top up, repair, replace, reduce the price, and by when.",
  find: ({ requirements }) =>
    requirements
      .filter((each) => isCheckedOnTheWork(each) && each.remedy === "")
      .map(({ id, label }) => ({
        requirements: [id],
        sentence: `Nothing says what happens when ${inSentence(label)} is missed.`,
      })),
};
