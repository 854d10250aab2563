import { type CostCategory, type CostPart, costCategories, type GivenBy } from "#lib/cost";
import type { AuditLine } from "./audit-lines";

/** One part of a price line: a row of the yearly flows. */
export type FlowRow = Readonly<{
  audit: AuditLine;
  part: CostPart;
  category: CostCategory;
  givenBy: GivenBy;
  recurrence: "yearly" | "single";
}>;

export const partWords: Readonly<Record<CostPart, string>> = {
  price: "price",
  "first-cost": "first cost",
  renewal: "renewals",
  "removal-at-renewal": "removal at renewals",
  "removal-at-study-end": "removal at the end of the study",
  residual: "value left at the end of the study",
};

export const categoryWords = (category: CostCategory): string => costCategories[category].label;

/** The rows that a price line gives. Removal has rows only where it is priced. */
export function flowRowsOf(audit: AuditLine): readonly FlowRow[] {
  const { line } = audit;
  if (line.kind !== "replacement-chain") {
    const { category, givenBy } = line;
    return [{ audit, part: "price", category, givenBy, recurrence: line.kind === "yearly" ? "yearly" : "single" }];
  }
  const part = (name: CostPart, category: CostCategory, givenBy = line.givenBy): FlowRow => ({
    ...{ audit, part: name, category, givenBy, recurrence: "single" },
  });
  return [
    part("first-cost", "investment"),
    part("renewal", "replacement"),
    ...(line.removal === null
      ? []
      : [
          part("removal-at-renewal", "removal-and-disposal", line.removalGivenBy),
          part("removal-at-study-end", "removal-and-disposal", line.removalGivenBy),
        ]),
    part("residual", "residual"),
  ];
}
