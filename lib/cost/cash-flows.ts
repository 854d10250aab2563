import type { In } from "#lib/quantity";
import { type CostCategory, costCategories } from "./categories";
import { studyYearsOf } from "./cost-line-kind";
import { flowsOf } from "./cost-lines";
import { inMoneyOf } from "./current-money";
import type { CostConventions, CostFlow, CostStream, PriceLine } from "./model";

/** What cash flows depend on besides the lines. The area is that of the whole field, in m². */
export type CostSetting = Readonly<{ area: In<"m²">; conventions: CostConventions }>;

/** One flow and the line it comes from. */
export type LineFlow = Readonly<{ line: PriceLine; flow: CostFlow }>;

/** All money of a bid by year, in cents that are not rounded: each flow of each line, by category, and in all. */
export type CashFlows = Readonly<{
  flows: readonly LineFlow[];
  byCategory: Readonly<Record<CostCategory, CostStream>>;
  total: CostStream;
}>;

/** Sums of streams, filled in one pass over the flows. */
const noMoney = (years: number): number[] => new Array<number>(years + 1).fill(0);

function add(sum: number[], stream: CostStream): void {
  for (let year = 0; year < sum.length; year += 1) sum[year] = (sum[year] ?? 0) + (stream[year] ?? 0);
}

/**
 * Spreads price lines over the years of the study, in the money of the conventions. Constant money is discounted at the
 * real rate, current money at the nominal one: `discountRate` gives the one that belongs.
 * @param lines with ids that differ and with every share resolved, as `resolvedLines` hands them back
 * @throws RangeError for a share of a sum that is not known
 */
export function cashFlows(lines: readonly PriceLine[], { area, conventions }: CostSetting): CashFlows {
  const setting = { area, ...studyYearsOf(conventions) };
  const { studyYears } = setting;
  const flows = lines.flatMap((line) =>
    flowsOf(line, setting).map((flow) => ({ line, flow: inMoneyOf(flow, conventions) })),
  );
  const categories = Object.keys(costCategories) as CostCategory[];
  const byCategory = Object.fromEntries(categories.map((category) => [category, noMoney(studyYears)])) as Record<
    CostCategory,
    number[]
  >;
  const total = noMoney(studyYears);
  for (const { flow } of flows) {
    add(byCategory[flow.category], flow.stream);
    add(total, flow.stream);
  }
  return { flows, byCategory, total };
}
