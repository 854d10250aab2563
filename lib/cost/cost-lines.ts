import { atBaseDate } from "./at-base-date";
import type { CostLineKind, FlowSetting } from "./cost-line-kind";
import { inYear } from "./in-year";
import type { CostFlow, PriceLine, PriceLineKind } from "./model";
import { periodic } from "./periodic";
import { replacementChain } from "./replacement-chain";
import { yearly } from "./yearly";

/** Every kind of price line. Form, schema and computation read this list. */
export const costLines: { readonly [K in PriceLineKind]: CostLineKind<K> } = {
  "at-base-date": atBaseDate,
  "in-year": inYear,
  yearly,
  periodic,
  "replacement-chain": replacementChain,
};

/** Flows of one line by year, within the study. */
export const flowsOf = <K extends PriceLineKind>(line: PriceLine<K>, setting: FlowSetting): readonly CostFlow[] =>
  costLines[line.kind].flows(line, setting);

/** When a line is paid, in words. */
export const scheduleOf = <K extends PriceLineKind>(line: PriceLine<K>, studyYears: number): string =>
  costLines[line.kind].schedule(line, studyYears);

/** The last year that a line names; null where it follows the study period. */
export const lastYearOf = <K extends PriceLineKind>(line: PriceLine<K>): number | null =>
  costLines[line.kind].lastYear(line);
