import { amountCents } from "./amount";
import { type CostLineKind, everyYear, growth, growthText, onlyPrice, streamOf } from "./cost-line-kind";

/** Paid in every year from one to another; the first payment falls in the first year of service unless the line says otherwise. */
export const yearly: CostLineKind<"yearly"> = {
  label: "Every year",
  prices: (line, { studyYears, serviceStart }) => {
    const { from, to, escalation } = line;
    return onlyPrice(
      line,
      `in each of the years ${from?.years ?? serviceStart + 1} to ${to?.years ?? studyYears}${growthText(escalation)}`,
    );
  },
  lastYear: ({ to }) => to?.years ?? null,
  assumptions: () => [],
  flows: ({ amount, category, givenBy, from, to, escalation }, { area, studyYears, serviceStart }) => {
    const cents = amountCents(amount, area);
    const years = everyYear(from?.years ?? serviceStart + 1, to?.years ?? studyYears);
    const payments = new Map(years.map((year) => [year, cents * growth(escalation, year)]));
    return [{ part: "price", givenBy, category, recurrence: "yearly", stream: streamOf(studyYears, payments) }];
  },
};
