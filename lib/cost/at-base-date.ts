import { amountCents } from "./amount";
import { type CostLineKind, streamOf } from "./cost-line-kind";

/** Paid once, at the base date: year 0, not discounted. */
export const atBaseDate: CostLineKind<"at-base-date"> = {
  label: "Once, at the base date",
  schedule: () => "once, at the base date",
  lastYear: () => 0,
  flows: ({ amount, category }, { area, studyYears }) => [
    {
      part: "price",
      category,
      recurrence: "single",
      stream: streamOf(studyYears, new Map([[0, amountCents(amount, area)]])),
    },
  ],
};
