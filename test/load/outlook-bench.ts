import { type ChanceQuestion, chanceOutlook, hardnessOutlook, impactRequirementSchema, whatMovesIt } from "#lib/impact";
import { measured } from "#lib/quantity";

const requirement = impactRequirementSchema.parse({
  method: "f355-a",
  targetWindow: { low: "90 g", high: "140 g" },
  limit: "165 g",
  limitSource: "the bench",
  testLocations: "10",
  horizonYears: "30 years",
  ownersDrift: { low: "1 g/year", likely: "3 g/year", high: "6 g/year" },
  chanceLevel: "95 %",
  depthSensitivity: { kind: "common-practice" },
});
const years = requirement.horizonYears;

/** Every second bid carries a line of its own, the others rest on the owner's change. */
const bids = Array.from({ length: 20 }, (_, index) =>
  (index % 2 === 0 ? [0] : [0, 2, 4, 7]).map((age) => ({
    years: age,
    level: {
      low: measured("impactLevel", 108 + index + 3 * age + (age % 3)),
      high: measured("impactLevel", 110 + index + 3 * age),
    },
    from: { kind: "constant" } as const,
  })),
);

function outlookOf(stated: (typeof bids)[number]) {
  const outlook = hardnessOutlook({ newLevel: null, agedPoints: stated, requirement, years });
  if (outlook.kind === "unknown") throw new RangeError("the bench states levels");
  const share = { low: 0.05, likely: 0.1, high: 0.15 };
  const { low, likely, high } = requirement.ownersDrift;
  const question: ChanceQuestion = {
    basis:
      outlook.drift.kind === "fitted"
        ? { kind: "line", line: outlook.drift }
        : {
            kind: "scenario",
            used: stated.map(({ years: age, level }) => ({ years: age, ...level })),
            change: { low: low.value, likely: likely.value, high: high.value },
          },
    limits: {
      required: { low: null, high: requirement.limit.value },
      wished: { low: requirement.targetWindow.low.value, high: requirement.targetWindow.high.value },
    },
    spread: { kind: "share", law: "log-linear", deviation: share },
    ...{ resets: [{ year: 8, undone: 0.5 }], locations: requirement.testLocations, level: 0.95, years },
  };
  return { outlook, question, chances: chanceOutlook(question) };
}

function medianTime(work: () => unknown): number {
  const times = Array.from({ length: 31 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).toSorted((one, other) => one - other);
  return times[15] ?? Number.NaN;
}

/** Milliseconds for the outlook with chances of 20 bids over 30 years, and for ranking what moves them. */
export function measureOutlooks(): Readonly<{ outlooks: number; rankings: number }> {
  const all = bids.map(outlookOf);
  return {
    outlooks: medianTime(() => bids.map(outlookOf)),
    rankings: medianTime(() => all.map(({ question }) => whatMovesIt(question))),
  };
}
