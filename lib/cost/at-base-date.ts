import { amountCents } from "./amount";
import { type CostLineKind, onlyPrice, streamOf } from "./cost-line-kind";

/** Paid once, at the base date: year 0, not discounted. */
export const atBaseDate: CostLineKind<"at-base-date"> = {
  label: "Once, at the base date",
  prices: (line) => onlyPrice(line, "once, at the base date"),
  lastYear: () => 0,
  assumptions: () => [],
  flows: ({ amount, category, givenBy }, { area, studyYears }) => [
    {
      part: "price",
      givenBy,
      category,
      recurrence: "single",
      stream: streamOf(studyYears, new Map([[0, amountCents(amount, area)]])),
    },
  ],
};
