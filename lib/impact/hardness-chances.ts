import { formatValue, type In, type Interval, measured } from "#lib/quantity";
import type { SensitivityFacts } from "./depth-sensitivity";
import { type DepthGrid, type GridSpread, gridSpread, type NoGrid } from "./grid-spread";
import type { AgedLevel, ImpactRequirement } from "./model";
import { outlookChoices, wantedChance } from "./outlook-choices";
import { type ChanceOutlook, chanceOutlook, type SpreadBasis } from "./property/chances";
import type { StatedOneSided } from "./property/explain-chances";
import { isClosedValue, lineOverAge } from "./property/line-over-age";
import type { AgedValue, ValueBasis } from "./property/model";
import { depthDeviations, infillClass } from "./spread/depth-spread";
import { type FieldSensitivity, fieldSensitivity, type LevelAtLoss } from "./spread/field-sensitivity";
import { spreadValidity } from "./spread/spread-of-level";

export type HardnessChancesQuestion = Readonly<{
  /** Levels by the required method, as new (0 years) and later. */
  stated: readonly AgedLevel[];
  requirement: ImpactRequirement;
  facts: SensitivityFacts;
  /** Share of the infill's mass that is sand or another mineral; null where it can't be told. */
  mineralShare: Interval<"1"> | null;
  infillDepth: In<"m"> | null;
  /** The bid's own levels at full depth (loss 0) and at lesser depths; empty where it gives none. */
  levelsAtLoss: readonly LevelAtLoss[];
  /** Depths measured on an installed field of this system; null where there are none. */
  depthGrid: DepthGrid | null;
}>;

/**
 * Chances with every level taken at its bound. The true ones are no smaller where the levels are stated as at most, and
 * no greater where they are stated as at least.
 * @source derived: a lower level keeps a limit from above more surely, in every year and at every spot
 */
export type ChanceBound = Readonly<{ stated: StatedOneSided; outlook: ChanceOutlook }>;

/** The chances with what they rest on, in sentences. */
export type HardnessChances = Readonly<{
  outlook: ChanceOutlook;
  sensitivity: FieldSensitivity;
  /** Where all levels are open on one and the same side, which leaves a bound of every chance; else null. */
  bound: ChanceBound | null;
  /** What was assumed and where it stops being valid. */
  assumptions: readonly string[];
}>;

/** Chances that locations of a field like the bid's meet the limit and lie in the target window, year by year. */
export function hardnessChances(question: HardnessChancesQuestion): HardnessChances {
  const { stated, requirement, facts } = question;
  const choices = outlookChoices(requirement);
  const { choice, levelsAtLoss } = { choice: requirement.depthSensitivity, levelsAtLoss: question.levelsAtLoss };
  const sensitivity = fieldSensitivity({ facts, choice, shockLayer: choices.shockLayer, levelsAtLoss });
  const grid = gridSpread(requirement, question.depthGrid);
  const spread = spreadBasis(question, sensitivity, grid);
  const basis = basisOf(stated, requirement);
  if (basis === null) {
    const because = { kind: "not-claimed", what: "any impact level by the required method" } as const;
    return { outlook: { kind: "unknown", because }, sensitivity, bound: null, assumptions: [] };
  }
  const { limit, targetWindow, testLocations, horizonYears } = requirement;
  const outlookFrom = (from: ValueBasis) =>
    chanceOutlook({
      ...{ basis: from, spread, resets: choices.resets },
      limits: {
        required: { low: null, high: limit.value },
        wished: { low: targetWindow.low.value, high: targetWindow.high.value },
      },
      ...{ locations: testLocations, level: wantedChance(requirement).value, years: horizonYears },
    });
  const outlook = outlookFrom(basis);
  const atBound = outlook.kind === "unknown" ? basisAtBound(basis) : null;
  return {
    ...{ outlook, sensitivity },
    bound: atBound === null ? null : { stated: atBound.stated, outlook: outlookFrom(atBound.basis) },
    assumptions: assumptionsOf(question, basis, spread, { sensitivity, grid }),
  };
}

/** Levels that are all stated as at most, or all as at least, each taken for the bound itself. */
function basisAtBound(basis: ValueBasis): Readonly<{ stated: ChanceBound["stated"]; basis: ValueBasis }> | null {
  if (basis.kind === "line") return null;
  const { used } = basis;
  const all = (side: "low" | "high") => used.every((value) => Number.isFinite(value[side]));
  const at = (side: "low" | "high"): ValueBasis => ({
    ...basis,
    used: used.map((value) => ({ ...value, low: value[side], high: value[side] })),
  });
  if (all("high")) return { stated: "at-most", basis: at("high") };
  return all("low") ? { stated: "at-least", basis: at("low") } : null;
}

function basisOf(stated: readonly AgedLevel[], { ownersDrift }: ImpactRequirement): ValueBasis | null {
  const values = stated.map(({ years, level: { low, high }, field, fields }): AgedValue => {
    return { years, low, high, field, fields };
  });
  if (values.length === 0) return null;
  const fit = lineOverAge(values);
  if (fit.kind === "fitted") return { kind: "line", line: fit.line };
  const { low, likely, high } = ownersDrift;
  return {
    kind: "scenario",
    used: values.some(isClosedValue) ? values.filter(isClosedValue) : values,
    change: { low: low.value, likely: likely.value, high: high.value },
  };
}

function spreadBasis(
  { requirement, mineralShare }: HardnessChancesQuestion,
  sensitivity: FieldSensitivity,
  grid: GridSpread | NoGrid,
): SpreadBasis {
  const { spread, law } = outlookChoices(requirement);
  if (grid.kind === "counts" && sensitivity.kind === "applies")
    return { kind: "depth", perDepth: sensitivity.perDepth, law, deviation: grid.deviation };
  if (spread.kind === "level-deviation") {
    const share = spread.share.value;
    return { kind: "share", law, deviation: { low: share, likely: share, high: share } };
  }
  if (sensitivity.kind === "does-not-apply") return { kind: "unknown", because: sensitivity.because };
  const { perDepth } = sensitivity;
  if (spread.kind === "depth-deviation") {
    const depth = spread.deviation.value;
    return { kind: "depth", perDepth, law, deviation: { low: depth, likely: depth, high: depth } };
  }
  return { kind: "depth", perDepth, law, deviation: depthDeviations[infillClass(mineralShare)][spread.grooming] };
}

/** A grid without a sensitivity says nothing of the level. */
const whyNoGrid = ({ kind, sentence }: GridSpread | NoGrid): readonly string[] => {
  if (kind === "counts") return ["The measured depths don’t count: how the level answers to lost depth is not known."];
  return sentence === null ? [] : [sentence];
};

const startedFrom = {
  "every-month": "levelled every month",
  "less-often": "levelled less often than every month",
} as const;

function assumptionsOf(
  { requirement, mineralShare, infillDepth, levelsAtLoss }: HardnessChancesQuestion,
  basis: ValueBasis,
  spread: SpreadBasis,
  { sensitivity, grid }: Readonly<{ sensitivity: FieldSensitivity; grid: GridSpread | NoGrid }>,
): readonly string[] {
  const choices = outlookChoices(requirement);
  return [
    ...(basis.kind === "line"
      ? [
          basis.line.fieldsApart.kind === "several-fields"
            ? "A new field lies off the bid's own line by the spread between its fields and the scatter on one (Student's t)."
            : "Fields scatter about the bid's own line as its results do (Student's t).",
        ]
      : [
          "The yearly change lies between the owner's low and high, most likely at the likely one (a triangle), and a level stated as a range may lie anywhere in it alike.",
        ]),
    ...(grid.kind === "counts" && spread.kind === "depth"
      ? [grid.sentence]
      : [...spreadInWords(choices.spread, infillClass(mineralShare), spread), ...whyNoGrid(grid)]),
    ...(spread.kind === "depth"
      ? [
          `Sensitivity to depth loss ${formatValue("depthSensitivity", spread.perDepth.likely, "us")} (${formatValue("depthSensitivity", spread.perDepth.likely, "metric")}), ${sensitivity.kind === "applies" ? sensitivity.source : ""}, ${lawInWords[spread.law]}.`,
          ...spreadValidity({
            deviation: spread.deviation.likely,
            perDepth: spread.perDepth.likely,
            ...{ law: spread.law, infillDepth },
            ...(sensitivity.kind === "applies" ? { largestLoss: sensitivity.largestLoss } : {}),
            ofOwnLevels: levelsAtLoss.length > 0,
          }),
        ]
      : []),
    ...(spread.kind === "unknown"
      ? []
      : ["Locations differ independently of each other and by as much in every year; none is frozen or saturated."]),
  ];
}

const lawInWords = {
  "log-linear": "read as growth by an even share per depth",
  linear: "read as growth by an even amount per depth",
} as const;

function spreadInWords(
  choice: ReturnType<typeof outlookChoices>["spread"],
  infill: ReturnType<typeof infillClass>,
  spread: SpreadBasis,
): readonly string[] {
  switch (choice.kind) {
    case "level-deviation":
      return [
        `The level differs from spot to spot with a standard deviation of ${formatValue("fraction", measured("fraction", choice.share.value), "us")}; owner's value: ${choice.reason}`,
      ];
    case "depth-deviation":
      return spread.kind === "depth"
        ? [`${deviationInWords(choice.deviation.value)}; owner's value: ${choice.reason}`]
        : [];
    case "by-class": {
      if (spread.kind !== "depth") return [];
      const kind = infill === "mostly-mineral" ? "mostly mineral" : "mostly light or not known";
      return [
        `${deviationInWords(spread.deviation.likely)}, for infill that is ${kind} and ${startedFrom[choice.grooming]}: owner's assumption to start from; no published figure.`,
      ];
    }
  }
}

const deviationInWords = (deviation: In<"m">): string =>
  `Infill depth differs from spot to spot with a standard deviation of ${formatValue("length", deviation, "us")} (${formatValue("length", deviation, "metric")})`;
