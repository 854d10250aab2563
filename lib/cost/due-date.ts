import { type PlainDate, plainDate } from "#lib/quantity";
import type { CostConventions, PriceLine } from "./model";

/** The year in which a line is first paid, counted from the base date. */
function firstYear(line: PriceLine, serviceStart: number): number {
  switch (line.kind) {
    case "at-base-date":
    case "replacement-chain":
      return 0;
    case "in-year":
      return line.year.years;
    case "yearly":
      return line.from?.years ?? serviceStart + 1;
    case "periodic":
      return line.from?.years ?? serviceStart + line.every.years;
  }
}

/** The day on which a line is first paid: its year ends on the day of the base date. 29 February becomes the 28th. */
export function dueDate(
  line: PriceLine,
  { baseDate, serviceStart }: Pick<CostConventions, "baseDate" | "serviceStart">,
): PlainDate {
  const [year = "", month = "", day = ""] = baseDate.split("-");
  const due = String(Number(year) + firstYear(line, serviceStart.years)).padStart(4, "0");
  const last = new Date(Date.UTC(Number(due), Number(month), 0)).getUTCDate();
  return plainDate(`${due}-${month}-${String(Math.min(Number(day), last)).padStart(2, "0")}`);
}
