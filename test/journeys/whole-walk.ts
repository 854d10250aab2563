/** Everything is walked and looked at where WALK=whole says so; else what a day's run has the time for. */
export const isWholeWalk = process.env.WALK === "whole";
