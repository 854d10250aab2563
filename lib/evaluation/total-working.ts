import type { BidScore, CriterionScore } from "#lib/criteria";
import type { Working } from "#lib/figure";
import { formatPointSpan, formatShare } from "./points";
import { consequenceInWords } from "./shortfall-in-words";

/** "25 % × 94 = 23.5", or with a range on both sides, and by which rule where the figure does not count in full. */
function partInWords(score: CriterionScore): string {
  const { share, value, contribution, asked } = score;
  const open = value !== null && value.low < value.high;
  const [of, gives] = [formatPointSpan(value ?? contribution), formatPointSpan(contribution)];
  const product = open ? `${formatShare(share)} × (${of}) = ${gives}` : `${formatShare(share)} × ${of} = ${gives}`;
  const rule = asked === "no" ? "It is not asked of this bid and counts in full." : consequenceInWords(score);
  return rule === "" ? product : `${product}. ${rule}`;
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
    "A figure that is missing, not comparable or less proven than asked for counts by the rule that the owner set for its criterion before any bid was read.",
    "The likely total takes each figure as stated, the middle of a range and the bound of a one-sided figure. There is none while a weighing figure is missing.",
    "Numbers are rounded where they are shown, not before they are added.",
  ],
  source: "additive value model with swing weights: von Winterfeldt and Edwards 1986, from memory",
});
