import { amountCents } from "./amount";
import type { CostCategory } from "./categories";
import { type CostLineKind, everyYear, growth, growthText, intervalText, streamOf } from "./cost-line-kind";
import type { CostFlow, CostPart, PriceLine } from "./model";

const removalWords = {
  "used-life-share": "the share of the life that is used up",
  full: "in full",
  none: "not counted",
} as const;

const residualWords = {
  "straight-line": "what was last paid for it × remaining life ÷ life",
  none: "not counted",
} as const;

/** A part that is renewed each time its life is over. A life that ends with the study is not renewed once more. */
export const replacementChain: CostLineKind<"replacement-chain"> = {
  label: "A part with a life, renewed until the study ends",
  prices: (line) => {
    const { label, amount, givenBy, life, renewalSaving, removal, removalGivenBy, removalAtStudyEnd, escalation } =
      line;
    const saving = renewalSaving === null ? "" : ` at a saving of ${renewalSaving.asEntered}`;
    const growing = growthText(escalation);
    const schedule = `at the base date, renewed ${intervalText(life)}${saving}${growing}`;
    const main = { label, amount, givenBy, schedule };
    if (removal === null) return [main];
    const atEnd = removalAtStudyEnd === "none" ? "" : " and at the end of the study";
    const removalSchedule = `each time it is renewed${atEnd}${growing}`;
    return [main, { label: `${label}, removal`, amount: removal, givenBy: removalGivenBy, schedule: removalSchedule }];
  },
  lastYear: () => null,
  assumptions: ({ label, life, lifeGivenBy, removal, removalAtStudyEnd, residual }) => [
    ...(lifeGivenBy === "owner-estimate" ? [`The ${life.years}-year life of “${label}” is the owner’s estimate.`] : []),
    ...(removal === null ? [] : [`Removal of “${label}” at the end of the study: ${removalWords[removalAtStudyEnd]}.`]),
    `Value of “${label}” left at the end of the study: ${residualWords[residual]}.`,
  ],
  flows: (line, { area, studyYears }) => {
    const firstCost = amountCents(line.amount, area);
    const renewals = everyYear(line.life.years, studyYears - 1, line.life.years);
    const renewalCost = firstCost * (1 - (line.renewalSaving?.value ?? 0));
    const paidInYear = (cents: number) => (year: number) => [year, cents * growth(line.escalation, year)] as const;
    const part = (
      name: CostPart,
      category: CostCategory,
      payments: readonly (readonly [number, number])[],
    ): CostFlow => ({
      part: name,
      givenBy: category === "removal-and-disposal" ? line.removalGivenBy : line.givenBy,
      category,
      recurrence: "single",
      stream: streamOf(studyYears, new Map(payments)),
    });

    const removal = line.removal === null ? 0 : amountCents(line.removal, area);
    const lastBought = renewals.at(-1) ?? 0;
    const usedShare = (studyYears - lastBought) / line.life.years;
    const lastPaid = (lastBought === 0 ? firstCost : renewalCost) * growth(line.escalation, lastBought);
    return [
      part("first-cost", "investment", [[0, firstCost]]),
      part("renewal", "replacement", renewals.map(paidInYear(renewalCost))),
      part("removal-at-renewal", "removal-and-disposal", renewals.map(paidInYear(removal))),
      part("removal-at-study-end", "removal-and-disposal", [
        paidInYear(removal * removalShare(line, usedShare))(studyYears),
      ]),
      part("residual", "residual", [[studyYears, line.residual === "none" ? 0 : lastPaid * (usedShare - 1)]]),
    ];
  },
};

/** The share of one removal that the study bears at its end: the following owner of the part bears the rest. */
function removalShare({ removalAtStudyEnd }: PriceLine<"replacement-chain">, usedShare: number): number {
  switch (removalAtStudyEnd) {
    case "used-life-share":
      return usedShare;
    case "full":
      return 1;
    case "none":
      return 0;
  }
}
