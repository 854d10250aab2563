import type { Distribution, DistributionRule } from "../model";

type Terms = Distribution<"discrete">;

const meanOf = ({ values }: Terms): number => values.reduce((sum, { value, chance }) => sum + value * chance, 0);
const inPercent = (chance: number) => `${Number((100 * chance).toPrecision(3))} %`;

export const discrete: DistributionRule<"discrete"> = {
  label: "One of several values",
  written: "value: chance, value: chance",
  example: "8: 25 %, 10: 50 %, 12: 25 %",
  mean: meanOf,
  variance: (terms) => {
    const mean = meanOf(terms);
    return terms.values.reduce((sum, { value, chance }) => sum + chance * (value - mean) ** 2, 0);
  },
  quantile: ({ values }) => {
    const rising = values.toSorted((one, other) => one.value - other.value);
    const ends: number[] = [];
    for (const { chance } of rising) ends.push((ends.at(-1) ?? 0) + chance);
    const last = rising.at(-1)?.value ?? Number.NaN;
    return (chance) => {
      for (let index = 0; index < ends.length - 1; index += 1)
        if (chance < (ends[index] as number)) return rising[index]?.value ?? last;
      return last;
    };
  },
  stated: ({ values }) =>
    values.reduce((best, one) => (one.chance > best.chance ? one : best), values[0] ?? { value: Number.NaN, chance: 0 })
      .value,
  inWords: ({ values }, show) => values.map(({ value, chance }) => `${show(value)} (${inPercent(chance)})`).join(", "),
  fromFigures: (figures) => {
    const without = figures.find(({ chance }) => chance === null);
    if (figures.length === 0 || without !== undefined)
      return `“${without?.text ?? ""}” has no chance; expected each value with its chance, for example “${discrete.example}”.`;
    const values = figures.map(({ value, chance }) => ({ value, chance: chance ?? 0 }));
    const negative = figures.find(({ chance }) => !((chance ?? -1) >= 0));
    if (negative !== undefined) return `The chance of “${negative.text}” is below 0 %; expected 0 % or more.`;
    const twice = values.find(({ value }, index) => values.findIndex((other) => other.value === value) !== index);
    if (twice !== undefined) return `The value ${twice.value} stands there twice; expected each value once.`;
    const sum = values.reduce((total, { chance }) => total + chance, 0);
    if (Math.abs(sum - 1) > 1e-9) return `The chances add up to ${inPercent(sum)}; expected 100 % in all.`;
    return { values };
  },
};
