import { amountCents } from "./amount";
import type { CostCategory } from "./categories";
import {
  type CostLineKind,
  everyYear,
  growth,
  growthText,
  intervalText,
  type StudyYears,
  streamOf,
} from "./cost-line-kind";
import type { CostFlow, CostPart, PriceLine } from "./model";

const removalWords = {
  "used-life-share": "the share of the life that is used up",
  full: "in full",
  none: "not counted",
} as const;

function residualText({ residual, statedResidual }: Chain): string {
  switch (residual) {
    case "straight-line":
      return "what was last paid for it × remaining life ÷ life";
    case "stated":
      return `${statedResidual?.asEntered ?? ""}, as stated`;
    case "none":
      return "not counted";
  }
}

/** The value at the end of the study where the line states one. */
export const statedResidualOf = ({ residual, statedResidual }: Chain): Chain["statedResidual"] =>
  residual === "stated" ? statedResidual : null;

/** A part that is renewed each time its life is over. A life that ends with the study is not renewed once more. */
export const replacementChain: CostLineKind<"replacement-chain"> = {
  label: "A part with a life, renewed until the study ends",
  prices: (line, years) => {
    const { label, amount, givenBy, removal, removalGivenBy, removalAtStudyEnd, escalation } = line;
    const growing = growthText(escalation);
    const main = { label, amount, givenBy, schedule: `at the base date, ${renewalText(line, years)}${growing}` };
    if (removal === null) return [main];
    const atEnd = removalAtStudyEnd === "none" ? "" : " and at the end of the study";
    const removalSchedule = `each time it is renewed${atEnd}${growing}`;
    return [main, { label: `${label}, removal`, amount: removal, givenBy: removalGivenBy, schedule: removalSchedule }];
  },
  lastYear: () => null,
  assumptions: (line) => chainAssumptions(line),
  flows: (line, setting) => {
    const { area, studyYears } = setting;
    const firstCost = amountCents(line.amount, area);
    const renewals = renewalYears(line, setting);
    const share = line.replacedShare?.value ?? 1;
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
    const left = generationsLeft(line, renewals, setting);
    const usedShare = left.reduce((sum, { size, used }) => sum + size * used, 0);
    const paidFor = ({ bought }: Generation) =>
      (bought === 0 ? firstCost : renewalCost) * growth(line.escalation, bought);
    const residual = left.reduce((sum, one) => sum + paidFor(one) * one.size * (one.used - 1), 0);
    return [
      part("first-cost", "investment", [[0, firstCost]]),
      part("renewal", "replacement", renewals.map(paidInYear(renewalCost * share))),
      part("removal-at-renewal", "removal-and-disposal", renewals.map(paidInYear(removal * share))),
      part("removal-at-study-end", "removal-and-disposal", [
        paidInYear(removal * removalShare(line, usedShare))(studyYears),
      ]),
      part("residual", "residual", [[studyYears, residualCredit(line, residual)]]),
    ];
  },
};

type Chain = PriceLine<"replacement-chain">;

function chainAssumptions(line: Chain): readonly string[] {
  const { label, life, lifeGivenBy, reuse, replacedShare, removal, removalAtStudyEnd } = line;
  return [
    ...(lifeGivenBy === "owner-estimate" && reuse === null
      ? [`The ${life.years}-year life of “${label}” is the owner’s estimate.`]
      : []),
    ...(reuse === null ? [] : [`“${label}” stays through ${life.asEntered}.`]),
    ...(replacedShare === null
      ? []
      : [`Each renewal of “${label}” replaces ${replacedShare.asEntered} of it, the oldest part first.`]),
    ...(removal === null ? [] : [`Removal of “${label}” at the end of the study: ${removalWords[removalAtStudyEnd]}.`]),
    `Value of “${label}” left at the end of the study: ${residualText(line)}.`,
  ];
}

/** ", renewed every 10 years at a saving of 8 %", with a first renewal and a share replaced where they differ. */
function renewalText(line: Chain, years: StudyYears): string {
  const { life, firstReplacement, renewalSaving, replacedShare } = line;
  const replaced = replacedShare === null ? "" : ` by ${replacedShare.asEntered} of it`;
  const saving = renewalSaving === null ? "" : ` at a saving of ${renewalSaving.asEntered}`;
  const first = firstReplacementYear(line, years);
  const deferred = firstReplacement === null && years.serviceStart === 0 ? "" : `, for the first time in year ${first}`;
  return `renewed ${intervalText(life)}${deferred}${replaced}${saving}`;
}

const firstReplacementYear = ({ life, firstReplacement }: Chain, { serviceStart }: StudyYears): number =>
  firstReplacement?.years ?? serviceStart + life.years;

/** The years in which the part is renewed, before the study ends. */
const renewalYears = (line: Chain, years: StudyYears): readonly number[] =>
  everyYear(firstReplacementYear(line, years), years.studyYears - 1, line.life.years);

/** What lies on the field at the end of the study: its share of the part, the year bought, the share of its life used. */
type Generation = Readonly<{ size: number; bought: number; used: number }>;

/** Each renewal takes out the oldest of what lies there. The first generation ages from the start of service. */
function generationsLeft(line: Chain, renewals: readonly number[], years: StudyYears): readonly Generation[] {
  const share = line.replacedShare?.value ?? 1;
  let lying: readonly Readonly<{ size: number; bought: number }>[] = [{ size: 1, bought: 0 }];
  for (const year of renewals) lying = [...withoutOldest(lying, share), { size: share, bought: year }];
  const firstLife = firstReplacementYear(line, years) - years.serviceStart;
  const lifeOf = (bought: number) =>
    bought > 0 ? line.life.years : share === 1 ? firstLife : Math.max(firstLife, line.life.years);
  const inUseFrom = (bought: number) => (bought > 0 ? bought : years.serviceStart);
  return lying.map(({ size, bought }) => ({
    size,
    bought,
    used: Math.min(1, (years.studyYears - inUseFrom(bought)) / lifeOf(bought)),
  }));
}

/** Shares smaller than this are the last bits of binary arithmetic. */
const nothing = 1e-12;

function withoutOldest<T extends Readonly<{ size: number }>>(lying: readonly T[], share: number): readonly T[] {
  let toTake = share;
  return lying.flatMap((one) => {
    const taken = Math.min(one.size, toTake);
    toTake -= taken;
    return one.size - taken > nothing ? [{ ...one, size: one.size - taken }] : [];
  });
}

/** What is left at the end of the study, as a payment: a value is a credit. */
function residualCredit(line: Chain, straightLine: number): number {
  switch (line.residual) {
    case "straight-line":
      return straightLine;
    case "stated":
      return -(line.statedResidual?.value ?? 0);
    case "none":
      return 0;
  }
}

/** The share of one removal that the study bears at its end: the following owner of the part bears the rest. */
function removalShare({ removalAtStudyEnd }: Chain, usedShare: number): number {
  switch (removalAtStudyEnd) {
    case "used-life-share":
      return usedShare;
    case "full":
      return 1;
    case "none":
      return 0;
  }
}
