import type { In } from "#lib/quantity";

/** Whether a level meets a limit: strictly below it. @source ASTM F1936 as quoted in ASTM work item WK38153 (below 200) */
export const meetsLimit = (level: In<"g">, limit: In<"g">): boolean => level < limit;
