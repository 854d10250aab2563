/** The two readings of the rule of thumb: growth by a constant share, or by a constant amount, per depth lost. */
export const depthLaws = ["log-linear", "linear"] as const;
export type DepthLaw = (typeof depthLaws)[number];
