/** How often the owner has the infill levelled. */
export const groomings = ["every-month", "less-often"] as const;
export type Grooming = (typeof groomings)[number];
