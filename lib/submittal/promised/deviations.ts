import { propertyOf, shownIn } from "#lib/claim";
import { gateDecision } from "#lib/criteria";
import { formatValue, measured, type UnitSystem } from "#lib/quantity";
import { spanChange } from "../span-change";
import type { PromisedRow, PromiseEntry } from "./model";

/** How closely figures are held against each other, and the units in which a difference is told. */
export type DeviationSetting = Readonly<{ sameWithin: number; units: UnitSystem }>;

/** What a row shows in sentences: where something falls short of what was promised, and what nobody has shown. */
export type RowFindings = Readonly<{
  deviations: readonly string[];
  /** Figures beyond a limit that was set for another age only: no breach, and worth knowing. */
  notes: readonly string[];
  gaps: readonly string[];
}>;

const isMeasured = ({ column }: PromiseEntry): boolean => column.kind === "accepted" || column.kind === "year";

/** Who says it, at the head of a sentence. */
function said({ column, value, years }: PromiseEntry): string {
  const age = years === null || years === 0 ? "" : ` for year ${years}`;
  switch (column.kind) {
    case "bid":
      return `The bid said ${value}${age}`;
    case "submitted":
      return `The submittal says ${value}${age}`;
    case "accepted":
      return `The acceptance test gave ${value}`;
    case "year":
      return `The test of year ${column.year} gave ${value}`;
    case "specified":
    case "guaranteed":
      return value;
  }
}

/** Whether a limit speaks of the age at which a figure was got; one that names no age holds whenever it is tested. */
const speaksOf = (limit: PromiseEntry, entry: PromiseEntry): boolean =>
  limit.years === null || limit.years === (entry.years ?? limit.years);

function againstLimits({ entries }: PromisedRow): readonly string[] {
  const limits = entries.filter(({ limit }) => limit !== null);
  return entries.flatMap((entry) =>
    limits.flatMap((specified) => {
      const { span, column } = entry;
      if (specified.limit === null || span === null || column.kind === "guaranteed") return [];
      if (!speaksOf(specified, entry)) return [];
      const outcome = gateDecision(specified.limit, span).kind;
      if (outcome === "meets") return [];
      const verb = outcome === "falls-short" ? "does not meet" : "lies across";
      return [`${said(entry)}, which ${verb} what is specified, ${specified.value}.`];
    }),
  );
}

/** Later figures beyond a limit that speaks of another age, where no limit of the row speaks of theirs. */
function beyondOtherAges({ entries }: PromisedRow): readonly string[] {
  const limits = entries.filter(({ limit }) => limit !== null);
  return entries.filter(isMeasured).flatMap((entry) => {
    const { span } = entry;
    if (span === null || limits.some((specified) => speaksOf(specified, entry))) return [];
    return limits.flatMap((specified) => {
      if (specified.limit === null || gateDecision(specified.limit, span).kind === "meets") return [];
      const age = specified.years === 0 ? "the new surface" : `year ${specified.years}`;
      return [`${said(entry)}. What is specified, ${specified.value}, is for ${age} and says nothing of this age.`];
    });
  });
}

/** The promise that a later figure is held against: of the same age, the last that was made. */
function promiseFor({ entries }: PromisedRow, entry: PromiseEntry): PromiseEntry | null {
  const before = entry.column.kind === "submitted" ? (["bid"] as const) : (["submitted", "bid"] as const);
  const years = entry.years ?? 0;
  for (const kind of before) {
    const made = entries.find((each) => each.column.kind === kind && (each.years ?? 0) === years);
    if (made !== undefined) return made;
  }
  return null;
}

function againstPromises(row: PromisedRow, { sameWithin, units }: DeviationSetting): readonly string[] {
  const property = propertyOf(row.property);
  return row.entries.flatMap((entry) => {
    if (entry.column.kind !== "submitted" && !isMeasured(entry)) return [];
    const promise = promiseFor(row, entry);
    if (promise === null) return [];
    const made = `where ${said(promise).replace(/^The /, "the ")}`;
    if (entry.choice !== null && promise.choice !== null)
      return entry.choice === promise.choice ? [] : [`${said(entry)}, ${made}.`];
    if (entry.span === null || promise.span === null || property.kind !== "quantity") return [];
    const change = spanChange(property.direction, promise.span, entry.span, sameWithin);
    if (change === "same" || change === "stronger") return [];
    const end = property.direction === "less" ? "high" : "low";
    const gap = entry.span[end] - promise.span[end];
    const by = Number.isFinite(gap)
      ? `${formatValue(property.dimension, measured(property.dimension, Math.abs(gap)), shownIn(property, units))} ${gap > 0 ? "more" : "less"}`
      : "another figure";
    return [`${said(entry)}, ${made}: ${by}${change === "weaker" ? ", which is weaker" : ""}.`];
  });
}

function againstGuarantees(
  { property: id, entries }: PromisedRow,
  { sameWithin }: DeviationSetting,
): readonly string[] {
  const { direction } = propertyOf(id);
  const guarantees = entries.filter(({ column }) => column.kind === "guaranteed");
  return entries.filter(isMeasured).flatMap((entry) =>
    guarantees.flatMap((guarantee) => {
      if (entry.span === null || guarantee.span === null) return [];
      if (guarantee.years !== null && (entry.years ?? 0) > guarantee.years) return [];
      const change = spanChange(
        direction,
        guarantee.span,
        entry.span,
        direction === "less" || direction === "more" ? 0 : sameWithin,
      );
      if (change === "same" || change === "stronger") return [];
      return [`${said(entry)}, which does not keep what is guaranteed, ${guarantee.value}.`];
    }),
  );
}

function gapsOf({ property, entries }: PromisedRow): readonly string[] {
  const isTested = propertyOf(property).methods.length > 0;
  const how = isTested ? " by a method that compares" : "";
  const has = (kind: PromiseEntry["column"]["kind"]) => entries.some(({ column }) => column.kind === kind);
  const isAsked = has("specified");
  return [
    ...(isAsked && !has("submitted") ? [`Nothing was submitted for it${how}.`] : []),
    ...(isAsked && isTested && !has("accepted") && !has("year")
      ? ["The finished field was not tested for it by a method that compares."]
      : []),
  ];
}

/** What a row shows: deviations from specification, promise and guarantee, in this order, and what is missing. */
export const rowFindings = (row: PromisedRow, setting: DeviationSetting): RowFindings => ({
  deviations: [...againstLimits(row), ...againstPromises(row, setting), ...againstGuarantees(row, setting)],
  notes: beyondOtherAges(row),
  gaps: gapsOf(row),
});
