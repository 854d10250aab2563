import type { CompletenessRule } from "./model";

export const criterionNotAnnounced: CompletenessRule = {
  id: "criterion-not-announced",
  title: "Criterion that the text does not announce",
  advice: "Say in the appendix on evaluation that it counts and how. What is not announced may not decide.",
  find: ({ requirements, announced }) =>
    requirements.flatMap(({ id, criterion }) =>
      criterion === null || announced.includes(criterion.id)
        ? []
        : [{ requirements: [id], sentence: `Bids are judged by “${criterion.label}”, and the text does not say so.` }],
    ),
};
