import { atBaseDate } from "./at-base-date";
import type { CostLineKind, FlowSetting, LinePrice, StudyYears } from "./cost-line-kind";
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

/** The prices that a line gives, in words, the main one first. */
export const pricesOf = <K extends PriceLineKind>(
  line: PriceLine<K>,
  years: StudyYears,
): readonly [LinePrice, ...LinePrice[]] => costLines[line.kind].prices(line, years);

/** What the flows of a line rest on besides its prices. What falls after the study is left out, and that is said. */
export function assumptionsOf<K extends PriceLineKind>(
  line: PriceLine<K>,
  { studyYears }: StudyYears,
): readonly string[] {
  const kind = costLines[line.kind];
  const lastYear = kind.lastYear(line) ?? 0;
  if (lastYear <= studyYears) return kind.assumptions(line);
  const left = `“${line.label}” is priced up to year ${lastYear}; what falls after year ${studyYears}, the end of the study, is not counted.`;
  return [left, ...kind.assumptions(line)];
}
