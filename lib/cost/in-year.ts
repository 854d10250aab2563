import { amountCents } from "./amount";
import { type CostLineKind, growth, growthText, streamOf } from "./cost-line-kind";

/** Paid once, at the end of a later year. */
export const inYear: CostLineKind<"in-year"> = {
  label: "Once, in a later year",
  schedule: ({ year, escalation }) => `once, at the end of year ${year.years}${growthText(escalation)}`,
  lastYear: ({ year }) => year.years,
  flows: ({ amount, category, year, escalation }, { area, studyYears }) => {
    const payment = amountCents(amount, area) * growth(escalation, year.years);
    return [
      { part: "price", category, recurrence: "single", stream: streamOf(studyYears, new Map([[year.years, payment]])) },
    ];
  },
};
