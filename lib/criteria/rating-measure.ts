import type { Measure } from "./model";

/**
 * What a criterion judges that people rate instead of measuring. Its figure is the value of the level that they chose, or
 * the value that they agreed on, as a share of full worth.
 */
export const ratingMeasure = {
  id: "evaluators-rating",
  label: "Rating by evaluators",
  dimension: "fraction",
  note: "People of the committee choose the level whose description fits the bid; nothing is measured.",
} as const satisfies Measure;
