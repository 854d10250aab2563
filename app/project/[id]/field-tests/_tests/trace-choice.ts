import { failed, type Result, succeeded } from "#lib/quantity";
import type { SuggestedMapping, TraceFormat, TraceMapping } from "#lib/trace";

/** What the reader says of the columns of a file. Empty where it still has to be chosen. */
export type TraceChoice = Readonly<{
  time: "column" | "sample-rate";
  timeColumn: number;
  timeUnit: "" | "s" | "ms" | "µs";
  rate: string;
  accelerationColumn: number;
  accelerationUnit: "" | "g" | "m/s²";
  sign: "as-recorded" | "turned-over";
}>;

/** What the headings suggest; of a file without headings the first column is taken for the time. */
export function startingChoice(suggested: SuggestedMapping, { columns }: TraceFormat): TraceChoice {
  return {
    time: columns === 1 ? "sample-rate" : "column",
    timeColumn: suggested.timeColumn ?? (suggested.accelerationColumn === 1 ? Math.min(2, columns) : 1),
    timeUnit: suggested.timeUnit ?? "",
    rate: "",
    accelerationColumn: suggested.accelerationColumn ?? (suggested.timeColumn === 2 ? 1 : Math.min(2, columns)),
    accelerationUnit: suggested.accelerationUnit ?? "",
    sign: "as-recorded",
  };
}

/** The choice as the reading takes it, or what is still to be chosen. */
export function mappingOf(choice: TraceChoice): Result<TraceMapping, readonly string[]> {
  const { time, timeColumn, timeUnit, rate, accelerationColumn, accelerationUnit, sign } = choice;
  const perSecond = /^\d[\d,]*(\.\d+)?$/.test(rate.trim()) ? Number(rate.replaceAll(",", "")) : null;
  const missing = [
    ...(time === "column" && timeUnit === "" ? ["Choose the unit of the time: the file does not say it."] : []),
    ...(time === "sample-rate" && perSecond === null
      ? [
          rate.trim() === ""
            ? "Give the samples a second."
            : `“${rate}” samples a second was read. Expected a number, for instance 20,000.`,
        ]
      : []),
    ...(accelerationUnit === "" ? ["Choose the unit of the acceleration: the file does not say it."] : []),
  ];
  if (missing.length > 0 || accelerationUnit === "") return failed(missing);
  const acceleration = { column: accelerationColumn, unit: accelerationUnit, sign };
  if (time === "sample-rate")
    return succeeded({ time: { kind: time, samplesPerSecond: perSecond ?? 0 }, acceleration });
  return timeUnit === ""
    ? failed(missing)
    : succeeded({ time: { kind: time, column: timeColumn, unit: timeUnit }, acceleration });
}
