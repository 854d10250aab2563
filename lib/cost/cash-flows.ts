import type { In } from "#lib/quantity";
import { type CostCategory, costCategories } from "./categories";
import { flowsOf } from "./cost-lines";
import type { CostConventions, CostFlow, CostStream, PriceLine } from "./model";

/** What cash flows depend on besides the lines. The area is that of the whole field, in m². */
export type CostSetting = Readonly<{ area: In<"m²">; conventions: CostConventions }>;

/** One flow and the line it comes from. */
export type LineFlow = Readonly<{ line: PriceLine; flow: CostFlow }>;

/** All money of a bid by year, in cents that are not rounded: by line and part, by category, and in all. */
export type CashFlows = Readonly<{
  flows: readonly LineFlow[];
  byLine: readonly Readonly<{ line: string; stream: CostStream }>[];
  byCategory: Readonly<Record<CostCategory, CostStream>>;
  total: CostStream;
}>;

const added = (streams: readonly CostStream[], years: number): CostStream =>
  Array.from({ length: years + 1 }, (_, year) => streams.reduce((sum, stream) => sum + (stream[year] ?? 0), 0));

/**
 * Spreads price lines over the years of the study, in constant money.
 * @param lines with ids that differ, as `priceLinesSchema` sees to
 */
export function cashFlows(lines: readonly PriceLine[], { area, conventions }: CostSetting): CashFlows {
  const studyYears = conventions.studyPeriod.years;
  const flows = lines.flatMap((line) => flowsOf(line, { area, studyYears }).map((flow) => ({ line, flow })));
  const sumWhere = (belongs: (entry: LineFlow) => boolean) =>
    added(
      flows.filter(belongs).map(({ flow }) => flow.stream),
      studyYears,
    );

  const categories = Object.keys(costCategories) as CostCategory[];
  const byCategory = Object.fromEntries(
    categories.map((category) => [category, sumWhere(({ flow }) => flow.category === category)]),
  ) as Record<CostCategory, CostStream>;
  return {
    flows,
    byLine: lines.map(({ id }) => ({ line: id, stream: sumWhere(({ line }) => line.id === id) })),
    byCategory,
    total: sumWhere(() => true),
  };
}
