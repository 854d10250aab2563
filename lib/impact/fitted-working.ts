import type { Working } from "#lib/figure";
import { formatInterval, formatValue, measured } from "#lib/quantity";
import { ageInWords } from "./age-in-words";
import type { AgedLevel, FittedDrift, OutlookQuestion } from "./model";
import { studentFactor } from "./student-factor";

/**
 * How levels from the line through the bid's levels come about, with the range that holds one new test result.
 * @source derived: least squares and its prediction interval
 */
export function fittedWorking(
  used: readonly AgedLevel[],
  { chanceLevel }: OutlookQuestion["requirement"],
  drift: FittedDrift,
): Working {
  const inputs = used.map(({ years, level, from }) => ({
    label: years === 0 ? "Level as new" : `Level at year ${ageInWords(years)}`,
    text: formatInterval("impactLevel", level, "us"),
    from,
  }));
  const chance = {
    label: "Chance that one new test result lies in the range, both sides together",
    text: chanceLevel.asEntered,
    from: { kind: "requirements", field: "impact.chanceLevel" },
  } as const;
  return {
    formula: formulas[drift.fieldsApart.kind],
    inputs: [...inputs, chance],
    assumptions: [
      lineInWords(drift, chanceLevel.value),
      ...fieldsInWords(drift),
      "Where a level was stated as a range, the result is widened by what its ends can change.",
    ],
    source: `fitted to the levels in the bid; derived by ${methods[drift.fieldsApart.kind]}`,
  };
}

const formulas = {
  pooled:
    "likely level = a + b × age; range = likely level ± t × s × √(1 + 1/n + (age − mean age)² ÷ Σ(age − mean age)²)",
  "several-fields":
    "likely level = a + b × age; range = likely level ± t × √(spread between fields² + scatter on a field² + error of the line²)",
} as const;

const methods = {
  pooled: "ordinary least squares",
  "several-fields": "restricted maximum likelihood (each field with an offset of its own)",
} as const;

const inGrams = (level: number): string => formatValue("impactLevel", measured("impactLevel", level), "us");

function fieldsInWords({ fieldsApart, residualDeviation }: FittedDrift): readonly string[] {
  if (fieldsApart.kind === "pooled") {
    return [
      "The levels scatter evenly and independently about a straight line, and this field will age like those tested.",
      fieldsApart.reason,
    ];
  }
  const { betweenFields, fields, named } = fieldsApart;
  const unnamed = fields - named;
  return [
    `All fields age by the same slope, each with an offset of its own: spread between fields ${inGrams(betweenFields)}, scatter on one field ${inGrams(residualDeviation)}. This field is one more of them.`,
    ...(unnamed === 0 ? [] : [`Levels on no named field count as a field of their own: ${unnamed}.`]),
  ];
}

const lineInWords = ({ points, intercept, slope, residualDeviation, degreesOfFreedom }: FittedDrift, chance: number) =>
  `Line through n = ${points.length} levels: a = ${formatValue("impactLevel", intercept, "us")}, b = ${formatValue("rateOfChange", slope, "us")}, scatter s = ${formatValue("impactLevel", residualDeviation, "us")}; t = ${studentFactor(chance, degreesOfFreedom).toFixed(3)} for ${Number(degreesOfFreedom.toFixed(1))} degrees of freedom.`;
