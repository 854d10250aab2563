import type { BidEvaluation } from "#lib/evaluation";

type Asked = Pick<BidEvaluation["hardness"], "asNew" | "asNewEvidence" | "outlook" | "sensitivity">;

const needsAges = ({ outlook }: Asked): boolean =>
  outlook.kind === "unknown" || outlook.drift.kind === "not-enough-points";

const isPastItsAges = ({ outlook }: Asked): boolean =>
  outlook.kind === "outlook" && outlook.drift.kind === "fitted" && outlook.years.at(-1)?.extrapolated === true;

/** Neutral questions that would close what is open in a bid's outlook. `method` is the designation that is required. */
export function hardnessQuestions(hardness: Asked, method: string, horizon: number): readonly string[] {
  const { asNew, asNewEvidence, sensitivity } = hardness;
  return [
    ...(asNew.kind === "unknown" ? [`Which level does this system have as new by ${method}?`] : []),
    ...(asNew.kind === "at-most" || asNew.kind === "at-least"
      ? ["Which single results stand behind the level as new, which is stated as a bound?"]
      : []),
    ...(asNew.kind !== "unknown" && (asNewEvidence === "stated" || asNewEvidence === "own-test")
      ? ["Which independent laboratory or field test shows the level as new? Please send the whole report."]
      : []),
    ...(needsAges(hardness)
      ? [`Which levels by ${method} were measured on installed fields of this system at three or more ages?`]
      : []),
    ...(isPastItsAges(hardness)
      ? [`Which levels by ${method} were measured on fields of this system near year ${horizon}?`]
      : []),
    ...(sensitivity.kind === "does-not-apply"
      ? ["Which levels were measured at two depths of infill, and how was the depth measured?"]
      : []),
  ];
}
