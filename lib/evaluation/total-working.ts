import type { BidScore, CriterionScore } from "#lib/criteria";
import type { Working } from "#lib/figure";
import { formatPointSpan, formatShare } from "./points";

/** "25 % × 94 = 23.5", or with a range on both sides. */
function partInWords({ share, value, contribution }: CriterionScore): string {
  const open = value !== null && value.low < value.high;
  const [of, gives] = [formatPointSpan(value ?? contribution), formatPointSpan(contribution)];
  return open ? `${formatShare(share)} × (${of}) = ${gives}` : `${formatShare(share)} × ${of} = ${gives}`;
}

/** How the total of a bid comes about, enough to redo it by hand. Criteria that only gate add nothing. */
export const totalWorking = ({ criteria }: BidScore): Working => ({
  formula: "total = Σ weight share × value; shares add up to 100 %, values run from 0 to 100 on the owner’s anchors",
  inputs: criteria
    .filter(({ share }) => share > 0)
    .map((score) => ({
      label: score.criterion.label,
      text: partInWords(score),
      from: { kind: "requirements", field: score.criterion.id },
    })),
  assumptions: [
    "A figure that is missing, not comparable or less proven than asked for runs from its worst to its best value, unless the owner counts it as worst.",
    "The likely total takes each figure as stated, the middle of a range and the bound of a one-sided figure. There is none while a weighing figure is missing.",
    "Numbers are rounded where they are shown, not before they are added.",
  ],
  source: "additive value model with swing weights: von Winterfeldt and Edwards 1986, from memory",
});
