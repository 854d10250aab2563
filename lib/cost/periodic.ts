import { amountCents } from "./amount";
import { type CostLineKind, everyYear, growth, growthText, intervalText, onlyPrice, streamOf } from "./cost-line-kind";

/**
 * Paid every so many years, for example a deep clean. Each payment counts as single: it stays at the end of its year in
 * mid-year timing.
 */
export const periodic: CostLineKind<"periodic"> = {
  label: "Every so many years",
  prices: (line, { studyYears, serviceStart }) => {
    const { every, from, until, except, escalation } = line;
    const span = `from year ${from?.years ?? serviceStart + every.years} to year ${until?.years ?? studyYears}`;
    const leftOut = except.length === 0 ? "" : `, except year ${except.join(", ")}`;
    return onlyPrice(line, `${intervalText(every)} ${span}${leftOut}${growthText(escalation)}`);
  },
  lastYear: ({ until }) => until?.years ?? null,
  assumptions: () => [],
  flows: (
    { amount, category, givenBy, every, from, until, except, escalation },
    { area, studyYears, serviceStart },
  ) => {
    const cents = amountCents(amount, area);
    const years = everyYear(from?.years ?? serviceStart + every.years, until?.years ?? studyYears, every.years);
    const paid = years.filter((year) => !except.includes(year));
    const payments = new Map(paid.map((year) => [year, cents * growth(escalation, year)]));
    return [{ part: "price", givenBy, category, recurrence: "single", stream: streamOf(studyYears, payments) }];
  },
};
