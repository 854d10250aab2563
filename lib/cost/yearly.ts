import { amountCents } from "./amount";
import { type CostLineKind, everyYear, growth, growthText, streamOf } from "./cost-line-kind";

/** Paid in every year from one to another; the first payment falls in year 1 unless the line says otherwise. */
export const yearly: CostLineKind<"yearly"> = {
  label: "Every year",
  schedule: ({ from, to, escalation }, studyYears) =>
    `in each of the years ${from?.years ?? 1} to ${to?.years ?? studyYears}${growthText(escalation)}`,
  lastYear: ({ to }) => to?.years ?? null,
  flows: ({ amount, category, from, to, escalation }, { area, studyYears }) => {
    const cents = amountCents(amount, area);
    const years = everyYear(from?.years ?? 1, to?.years ?? studyYears);
    const payments = new Map(years.map((year) => [year, cents * growth(escalation, year)]));
    return [{ part: "price", category, recurrence: "yearly", stream: streamOf(studyYears, payments) }];
  },
};
