import { type Criterion, ratingMeasure, weightShares } from "#lib/criteria";
import type { ImpactRequirement } from "#lib/impact";
import type { Person } from "#lib/people";

/** What is looked at before criteria are frozen. */
export type CompletenessFacts = Readonly<{
  impact: ImpactRequirement;
  criteria: readonly Criterion[];
  people: readonly Person[];
  /** The method of the impact requirement, as people call it. */
  impactMethod: string;
  /** The conventions of cost in words. */
  conventions: string;
}>;

export type CompletenessTopic =
  | "criteria"
  | "limits"
  | "methods"
  | "evidence"
  | "weights"
  | "impact requirement"
  | "cost conventions"
  | "ratings";

/** One thing looked at: what is so, what somebody should look at, or what keeps the criteria from being frozen. */
export type CompletenessNote = Readonly<{
  topic: CompletenessTopic;
  verdict: "complete" | "look at" | "missing";
  sentence: string;
  /** Ids of the criteria it is about. */
  criteria: readonly string[];
}>;

type Look = (facts: CompletenessFacts) => CompletenessNote;

const named = (criteria: readonly Criterion[]): string => criteria.map(({ label }) => `“${label}”`).join(", ");
const ids = (criteria: readonly Criterion[]): readonly string[] => criteria.map(({ id }) => id);

/** A note about the criteria that lack something, or that none does. */
function about(
  topic: CompletenessTopic,
  lacking: readonly Criterion[],
  sentences: Readonly<{ complete: string; lacking: (names: string) => string }>,
): CompletenessNote {
  return lacking.length === 0
    ? { topic, verdict: "complete", sentence: sentences.complete, criteria: [] }
    : { topic, verdict: "look at", sentence: sentences.lacking(named(lacking)), criteria: ids(lacking) };
}

const scored = ({ valueFunction }: Criterion): boolean => valueFunction.kind !== "none";
const rated = ({ measure }: Criterion): boolean => measure.id === ratingMeasure.id;

const theCriteria: Look = ({ criteria }) =>
  criteria.length === 0
    ? {
        topic: "criteria",
        verdict: "missing",
        sentence: "There is no criterion yet, so there is nothing to freeze.",
        criteria: [],
      }
    : {
        topic: "criteria",
        verdict: "complete",
        sentence: `${criteria.length === 1 ? "One criterion says" : `${criteria.length} criteria say`} what bids are judged by.`,
        criteria: [],
      };

const limits: Look = ({ criteria }) => {
  const safety = criteria.filter(({ measure }) => measure.dimension === "impactLevel");
  if (safety.length > 0 && safety.every(({ gate }) => gate.kind === "none"))
    return {
      topic: "limits",
      verdict: "look at",
      sentence: `No criterion holds the impact level to a limit; ${named(safety)} only scores it.`,
      criteria: ids(safety),
    };
  return about(
    "limits",
    criteria.filter(({ gate }) => gate.kind === "none"),
    {
      complete: "Every criterion has a limit that a bid must keep.",
      lacking: (names) => `These have no limit, so no bid can fail on them: ${names}.`,
    },
  );
};

const methods: Look = ({ impactMethod, criteria }) => {
  const judged = criteria.filter(({ measure }) => measure.dimension === "impactLevel").length;
  return {
    topic: "methods",
    verdict: "complete",
    sentence: `A figure by another method than the one a criterion names does not count.${judged === 0 ? "" : ` Impact levels go by ${impactMethod}.`}`,
    criteria: [],
  };
};

const evidence: Look = ({ criteria }) =>
  about(
    "evidence",
    criteria.filter((criterion) => criterion.evidence.least.rank === 0 && !rated(criterion) && !costs(criterion)),
    {
      complete: "Every criterion says which proof counts.",
      lacking: (names) => `For these a bidder’s bare word counts: ${names}.`,
    },
  );

const costs = ({ measure }: Criterion): boolean => measure.dimension.startsWith("money");

const weights: Look = ({ criteria }) => {
  const shares = weightShares(criteria);
  if (shares.every((share) => share === 0))
    return {
      topic: "weights",
      verdict: "look at",
      sentence: "No criterion carries weight, so bids that keep every limit can’t be put in an order.",
      criteria: [],
    };
  return about(
    "weights",
    criteria.filter((criterion, at) => scored(criterion) && shares[at] === 0),
    {
      complete: "Every criterion that scores carries weight.",
      lacking: (names) => `These score and carry no weight: ${names}.`,
    },
  );
};

const impactRequirement: Look = ({ impact }) =>
  impact.limitSource.trim() === ""
    ? {
        topic: "impact requirement",
        verdict: "look at",
        sentence: `The limit of ${impact.limit.asEntered} names no source.`,
        criteria: [],
      }
    : {
        topic: "impact requirement",
        verdict: "complete",
        sentence: `Limit ${impact.limit.asEntered} (${impact.limitSource}), target window ${impact.targetWindow.low.asEntered} to ${impact.targetWindow.high.asEntered}.`,
        criteria: [],
      };

const costConventions: Look = ({ criteria, conventions }) =>
  criteria.some(costs)
    ? { topic: "cost conventions", verdict: "complete", sentence: conventions, criteria: [] }
    : {
        topic: "cost conventions",
        verdict: "look at",
        sentence: "No criterion judges cost, so cost does not score, whatever its conventions are.",
        criteria: [],
      };

const ratings: Look = ({ criteria, people }) => {
  const by = criteria.filter(rated);
  const evaluators = people.filter(({ roles }) => roles.includes("evaluator")).length;
  if (by.length === 0)
    return { topic: "ratings", verdict: "complete", sentence: "Nothing is rated by evaluators.", criteria: [] };
  if (evaluators === 0)
    return {
      topic: "ratings",
      verdict: "look at",
      sentence: `Evaluators are to rate ${named(by)}, and nobody on the list of people is one.`,
      criteria: ids(by),
    };
  return {
    topic: "ratings",
    verdict: evaluators === 1 ? "look at" : "complete",
    sentence:
      evaluators === 1
        ? `One person alone rates ${named(by)}; there is nobody to agree with.`
        : `${evaluators} evaluators rate ${named(by)}.`,
    criteria: [],
  };
};

const looks: readonly Look[] = [
  ...[theCriteria, limits, methods, evidence, weights],
  ...[impactRequirement, costConventions, ratings],
];

/** What the completeness check says, topic by topic. Only what is missing keeps criteria from being frozen. */
export const completeness = (facts: CompletenessFacts): readonly CompletenessNote[] => looks.map((look) => look(facts));
