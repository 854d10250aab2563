import { formatValue, intervalOf, measured, type Quantity } from "#lib/quantity";
import { type Age, formatAge } from "./age";
import { type Condition, formatCondition, isConditionStated } from "./condition";
import { infillInWords, sameInfill } from "./infill-state";

export type ConditionAgreement = Readonly<{ kind: "agree" } | { kind: "differ"; reason: string }>;

/** Surfaces further apart than this are not held against each other. @source common practice, no source */
const temperatureTolerance = measured("temperatureDifference", 10, "K");

/**
 * Whether a figure got in one condition answers for another. An age that is not stated answers for none. Wetness and
 * temperature part two figures only where both are stated; an infill depth that nobody states is the full one.
 */
export function conditionsAgree(wanted: Condition, got: Condition): ConditionAgreement {
  const reason =
    notStated(wanted, got) ??
    unlikeMoisture(wanted, got) ??
    unlikeTemperature(wanted, got) ??
    unlikeInfill(wanted, got) ??
    unlikeAge(wanted, got);
  return reason === null ? { kind: "agree" } : { kind: "differ", reason };
}

function notStated(wanted: Condition, got: Condition): string | null {
  const asksForAge = wanted.age.kind !== "not-stated" || !isConditionStated(wanted);
  return asksForAge && got.age.kind === "not-stated"
    ? "The condition of the surface is not stated, and hardness and play change with age."
    : null;
}

function unlikeMoisture({ moisture: wanted }: Condition, { moisture: got }: Condition): string | null {
  if (wanted === "not-stated" || got === "not-stated" || wanted === got) return null;
  return `The figure was got on a ${got} surface and is wanted on a ${wanted} one; water changes hardness, grip and ball.`;
}

function unlikeTemperature({ temperature: wanted }: Condition, { temperature: got }: Condition): string | null {
  if (wanted === null || got === null || gap(wanted, got) <= temperatureTolerance) return null;
  const tolerance = (["us", "metric"] as const).map((system) =>
    formatValue("temperatureDifference", temperatureTolerance, system),
  );
  return `The figure was got at ${got.asEntered} and is wanted at ${wanted.asEntered}; temperatures more than ${tolerance.join(" (")}) apart are not held against each other, because infill and foam stiffen in the cold.`;
}

/** The kelvins between two temperatures; 0 where they overlap. */
function gap(one: Quantity<"temperature">, other: Quantity<"temperature">): number {
  const [left, right] = [intervalOf(one.reading), intervalOf(other.reading)];
  return Math.max(0, left.low - right.high, right.low - left.high);
}

function unlikeInfill({ infill: wanted }: Condition, { infill: got }: Condition): string | null {
  if (sameInfill(wanted, got)) return null;
  return `The figure was got ${infillInWords(got)} and is wanted ${infillInWords(wanted)}; hardness and play change with the depth.`;
}

function unlikeAge(wanted: Condition, got: Condition): string | null {
  const anyAge = wanted.age.kind === "not-stated" && isConditionStated(wanted);
  if (anyAge || (wanted.age.kind !== "not-stated" && ageKey(wanted.age) === ageKey(got.age))) return null;
  return `A figure for “${formatCondition(got)}” says nothing certain about “${formatCondition(wanted)}”.`;
}

const ageKey = (age: Age): string => formatAge(age).toLowerCase();
