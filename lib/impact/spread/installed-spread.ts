/** What the spread over an installed field comes from: the grid of depths measured on it, or what counts without one. */
export const installedSpreads = ["without-grid", "depth-grid"] as const;
export type InstalledSpread = (typeof installedSpreads)[number];
