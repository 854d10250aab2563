import { propertyOf } from "#lib/claim";
import type { Requirement } from "../model";

/** Whether a figure comes from a test: a price or a number of years needs none. */
export function isTested({ subject }: Requirement): boolean {
  if (subject === null) return false;
  if (subject.property !== undefined) return propertyOf(subject.property).methods.length > 0;
  return subject.dimension === "impactLevel";
}

/** Settled by bid and contract, so that nothing of it can be tested or mended on the field. */
const settledOnPaper = new Set(["warranty", "references", "maintenance", "delivery"]);

/** Whether a limit can be checked and missed on the finished work. */
export function isCheckedOnTheWork({ subject, limit }: Requirement): boolean {
  if (subject === null || limit === null || subject.dimension.startsWith("money")) return false;
  return subject.property === undefined || !settledOnPaper.has(propertyOf(subject.property).group);
}
