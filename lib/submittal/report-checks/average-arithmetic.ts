import type { PrintedAverage, ReportCheck } from "./model";

/** A number as a report prints it, with half a step of its last digit. */
function printed(text: string): Readonly<{ value: number; half: number }> | null {
  const digits = text.trim().replaceAll(",", "").replace("−", "-");
  if (!/^-?\d{1,15}(\.\d{1,10})?$/.test(digits)) return null;
  const decimals = digits.split(".")[1]?.length ?? 0;
  return { value: Number(digits), half: 0.5 * 10 ** -decimals };
}

const shown = (value: number): string => Number(value.toPrecision(6)).toString().replace("-", "−");
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Whether an average can be the mean of its readings: both are rounded to what is printed, so they may differ by half a
 * step of the average and half a step of the readings.
 */
function findingOf({ label, readings, average }: PrintedAverage): readonly string[] {
  const [numbers, stated] = [readings.map(printed), printed(average)];
  const read = numbers.filter((number) => number !== null);
  if (stated === null || read.length !== readings.length)
    return [`A figure of ${label} is not printed as a plain number, so its average was not checked.`];
  if (read.length === 0) return [];
  const values = read.map(({ value }) => value);
  const slack = (stated.half + Math.max(...read.map(({ half }) => half))) * (1 + 1e-9);
  const isMeanOf = (some: readonly number[]) => some.length > 0 && Math.abs(mean(some) - stated.value) <= slack;
  if (isMeanOf(values)) return [];
  const said = `${label}: the report gives ${average} as the average of ${readings.join(", ")}, and their mean is ${shown(mean(values))}.`;
  const withoutFirst = isMeanOf(values.slice(1))
    ? ` It is the mean without the first reading, ${shown(mean(values.slice(1)))}.`
    : "";
  return [said + withoutFirst];
}

export const averageArithmetic: ReportCheck = {
  id: "average-arithmetic",
  title: "The report’s own averages",
  find: ({ averages }) =>
    averages.flatMap((each) => findingOf(each).map((sentence) => ({ severity: "needs an answer" as const, sentence }))),
};
