/** Every technical link, by what it prices. */
export const linkIds = [
  "freight",
  "infill-top-up",
  "removal-and-disposal",
  "shock-layer",
  "grooming",
  "impact-tests",
  "cooling-water",
] as const;

export type LinkId = (typeof linkIds)[number];
