import { figureFromInterval } from "#lib/figure";
import { type In, measured } from "#lib/quantity";
import { driftFromAgedPoints, isClosed } from "./drift";
import { firstYear } from "./first-year";
import { fittedLevels } from "./fitted-levels";
import { meetsLimit } from "./meets-limit";
import type { AgedLevel, AgeSpan, HardnessOutlook, LevelSpan, OutlookQuestion, OutlookYear } from "./model";
import { scenarioLevels } from "./scenario-levels";

/**
 * Level by year: a line through the bid's levels with its prediction interval where they have three ages or more,
 * otherwise the owner's yearly change applied to the levels there are. The premise always says which.
 * @throws RangeError if the horizon is not a whole number of years from 0
 */
export function hardnessOutlook({ newLevel, agedPoints, requirement, years }: OutlookQuestion): HardnessOutlook {
  if (!(Number.isInteger(years) && years >= 0)) throw new RangeError(`whole years from 0 expected, got ${years}`);
  const stated = [...(newLevel === null ? [] : [{ ...newLevel, years: 0 }]), ...agedPoints];
  if (stated.length === 0)
    return { kind: "unknown", because: { kind: "not-claimed", what: "any impact level by the required method" } };
  const drift = driftFromAgedPoints(stated);
  const used = stated.some(isClosed) ? stated.filter(isClosed) : stated;
  const ages = agesOf(used);
  const { working, spanOf } =
    drift.kind === "fitted" ? fittedLevels(used, requirement, drift) : scenarioLevels(used, requirement);
  const outlookYears = Array.from({ length: years + 1 }, (_, year): OutlookYear => {
    const span = notBelowZero(spanOf(year));
    const extrapolated = year < ages.youngest || year > ages.oldest;
    const assumptions = [
      ...working.assumptions,
      ...extrapolationNote(year, ages),
      ...leftOutNote(stated.length - used.length),
    ];
    return { year, ...span, extrapolated, level: figureFromInterval("impactLevel", span, { ...working, assumptions }) };
  });
  return {
    kind: "outlook",
    premise: drift.kind === "fitted" ? "fitted-to-aged-data" : "owner-scenario",
    drift,
    limit: requirement.limit.value,
    softest: requirement.targetWindow.low.value,
    ages,
    years: outlookYears,
    ...firstYears(outlookYears, requirement),
  };
}

/** No surface has a level below 0 g, whatever a straight line says; an open side stays open. */
function notBelowZero({ low, likely, high }: LevelSpan): LevelSpan {
  const raised = (level: In<"g">) => (Number.isFinite(level) ? measured("impactLevel", Math.max(0, level)) : level);
  return { low: raised(low), likely: raised(likely), high: raised(high) };
}

function firstYears(years: readonly OutlookYear[], { limit, targetWindow }: OutlookQuestion["requirement"]) {
  return {
    firstYearLikelyAbove: firstYear(years, ({ likely }) => !meetsLimit(likely, limit.value)),
    firstYearPossiblyAbove: firstYear(years, ({ high }) => !meetsLimit(high, limit.value)),
    firstYearLikelyTooSoft: firstYear(years, ({ likely }) => likely < targetWindow.low.value),
    firstYearPossiblyTooSoft: firstYear(years, ({ low }) => low < targetWindow.low.value),
  };
}

const agesOf = (levels: readonly AgedLevel[]): AgeSpan => {
  const ages = levels.map(({ years }) => years);
  return { youngest: Math.min(...ages), oldest: Math.max(...ages) };
};

function extrapolationNote(year: number, { youngest, oldest }: AgeSpan): readonly string[] {
  if (year >= youngest && year <= oldest) return [];
  const known = youngest === oldest ? `age ${oldest}` : `ages ${youngest} to ${oldest}`;
  return [`Extrapolated: the levels used are for ${known} in years, this is year ${year}.`];
}

const leftOutNote = (count: number): readonly string[] =>
  count === 0 ? [] : [`Levels stated with one side only are left out: ${count}.`];
