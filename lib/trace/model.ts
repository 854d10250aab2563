import type { In } from "#lib/quantity";

/**
 * Acceleration of a missile against time, evenly sampled. A level is what the sensor reads in free fall as 0 and at
 * rest as 1 g; while the surface slows the missile down it is positive.
 */
export type Trace = Readonly<{
  /** Time between two samples. */
  interval: In<"s">;
  levels: readonly In<"g">[];
}>;

/** Levels between two samples are joined by straight lines; a place between samples is a fraction of an index. */
export type Pulse = Readonly<{
  /** Index of the highest sample. */
  peak: number;
  /** Where the level last rises through the threshold before the peak. */
  onset: number;
  /** Where it first falls through the threshold after the peak. */
  end: number;
  threshold: In<"g">;
  /** Whether the trace begins and ends below the threshold, so that the whole pulse was recorded. */
  recorded: "whole" | "cut-off-before" | "cut-off-after" | "cut-off-on-both-sides";
}>;

export const timeUnits = { s: 1, ms: 1e-3, µs: 1e-6 } as const satisfies Record<string, number>;
export type TimeUnit = keyof typeof timeUnits;

export const accelerationUnits = ["g", "m/s²"] as const;
export type AccelerationUnit = (typeof accelerationUnits)[number];

/** Standard acceleration of gravity in m/s². @source 3rd General Conference on Weights and Measures (1901), exact */
export const standardGravity = 9.80665;

/** Which columns of a file hold what. Columns are counted from 1. */
export type TraceMapping = Readonly<{
  time:
    | Readonly<{ kind: "column"; column: number; unit: TimeUnit }>
    | Readonly<{ kind: "sample-rate"; samplesPerSecond: number }>;
  acceleration: Readonly<{ column: number; unit: AccelerationUnit; sign: "as-recorded" | "turned-over" }>;
}>;

export type Separator = "tab" | "semicolon" | "comma" | "space";
export type DecimalMark = "." | ",";

/** How the numbers stand in a file. Lines are counted from 1. */
export type TraceFormat = Readonly<{
  separator: Separator;
  decimal: DecimalMark;
  firstDataLine: number;
  columns: number;
  /** What stands above each column, empty where nothing does. */
  headings: readonly string[];
}>;

/** Why a file could not be read as a trace. Facts only; the words are in `explainTrace`. Lines and columns count from 1. */
export type TraceProblem = Readonly<
  | { kind: "too-long"; length: number }
  | { kind: "no-numbers"; read: string }
  | { kind: "separator-ambiguous"; line: number; read: string; readings: readonly string[] }
  | { kind: "column-missing"; column: number; columns: number }
  | { kind: "same-column"; column: number }
  | { kind: "sample-rate-out-of-reach"; read: number }
  | { kind: "cell-missing"; line: number; column: number; read: string }
  | { kind: "not-a-number"; line: number; column: number; read: string; decimal: DecimalMark }
  | { kind: "level-out-of-reach"; line: number; read: string }
  | { kind: "time-not-rising"; line: number; read: string; before: string }
  | { kind: "time-uneven"; line: number; read: string; step: number; usualStep: number }
  | { kind: "too-few-samples"; samples: number }
  | { kind: "too-many-samples"; samples: number }
>;
