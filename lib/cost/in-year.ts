import { amountCents } from "./amount";
import { type CostLineKind, growth, growthText, onlyPrice, streamOf } from "./cost-line-kind";

/** Paid once, at the end of a later year. */
export const inYear: CostLineKind<"in-year"> = {
  label: "Once, in a later year",
  prices: (line) => onlyPrice(line, `once, at the end of year ${line.year.years}${growthText(line.escalation)}`),
  lastYear: ({ year }) => year.years,
  assumptions: () => [],
  flows: ({ amount, category, givenBy, year, escalation }, { area, studyYears }) => {
    const payment = amountCents(amount, area) * growth(escalation, year.years);
    return [
      {
        part: "price",
        givenBy,
        category,
        recurrence: "single",
        stream: streamOf(studyYears, new Map([[year.years, payment]])),
      },
    ];
  },
};
