import { figureFromInterval, type Working } from "#lib/figure";
import { onFirstReading } from "#lib/once";
import { ageInWords } from "./age-in-words";
import { driftFromAgedPoints, fittedDrift } from "./drift";
import type { Reset } from "./effective-age";
import { fittedWorking } from "./fitted-working";
import type { AgeSpan, Drift, HardnessOutlook, OutlookQuestion, OutlookYear } from "./model";
import { outlookChoices } from "./outlook-choices";
import { isClosedValue } from "./property/line-over-age";
import { propertyOutlook } from "./property/outlook";
import { scenarioWorking } from "./scenario-working";

/**
 * Level by year: a line through the bid's levels with its prediction interval where they have three ages or more,
 * otherwise the owner's yearly change applied to the levels there are. The premise always says which.
 * @throws RangeError if the horizon is not a whole number of years from 0
 */
export function hardnessOutlook({ newLevel, agedPoints, requirement, years }: OutlookQuestion): HardnessOutlook {
  const { limit, targetWindow, ownersDrift, chanceLevel } = requirement;
  const { resets } = outlookChoices(requirement);
  const stated = [...(newLevel === null ? [] : [{ ...newLevel, years: 0 }]), ...agedPoints];
  const found = propertyOutlook({
    dimension: "impactLevel",
    what: "any impact level by the required method",
    stated: stated.map(({ years: age, level, field, fields }) => ({ years: age, value: level, field, fields })),
    change: { low: ownersDrift.low.value, likely: ownersDrift.likely.value, high: ownersDrift.high.value },
    limits: { low: targetWindow.low.value, high: limit.value },
    chance: chanceLevel.value,
    resets,
    years,
  });
  if (found.kind === "unknown") return found;
  const { basis, ages, leftOut, firstYears } = found;
  const used = leftOut > 0 ? stated.filter(({ level }) => isClosedValue(level)) : stated;
  const drift: Drift = basis.kind === "line" ? fittedDrift(basis.line) : driftFromAgedPoints(stated);
  const working = onFirstReading(() =>
    drift.kind === "fitted" ? fittedWorking(used, requirement, drift) : scenarioWorking(used, ownersDrift),
  );
  return {
    kind: "outlook",
    premise: found.premise,
    drift,
    limit: limit.value,
    softest: targetWindow.low.value,
    ages,
    years: found.years.map((year): OutlookYear => {
      const notes = () => [
        ...extrapolationNote(year.year, ages),
        ...leftOutNote(leftOut),
        ...resetNotes(resets, year.year),
      ];
      return { ...year, level: figureFromInterval("impactLevel", year, () => withNotes(working(), notes())) };
    }),
    firstYearLikelyAbove: firstYears.likelyAbove,
    firstYearPossiblyAbove: firstYears.possiblyAbove,
    firstYearLikelyTooSoft: firstYears.likelyBelow,
    firstYearPossiblyTooSoft: firstYears.possiblyBelow,
  };
}

const withNotes = (working: Working, notes: readonly string[]): Working => ({
  ...working,
  assumptions: [...working.assumptions, ...notes],
});

function extrapolationNote(year: number, { youngest, oldest }: AgeSpan): readonly string[] {
  if (year >= youngest && year <= oldest) return [];
  const known =
    youngest === oldest ? `age ${ageInWords(oldest)}` : `ages ${ageInWords(youngest)} to ${ageInWords(oldest)}`;
  return [`Extrapolated: the levels used are for ${known} in years, this is year ${year}.`];
}

const leftOutNote = (count: number): readonly string[] =>
  count === 0 ? [] : [`Levels stated with one side only are left out: ${count}.`];

const resetNotes = (resets: readonly Reset[], year: number): readonly string[] =>
  resets
    .filter((reset) => reset.year < year)
    .map(
      ({ year: done, undone }) =>
        `Owner's assumption: what is done at the end of year ${done} takes back ${Math.round(undone * 100)} % of the change gathered until then.`,
    );
