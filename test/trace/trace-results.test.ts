import { describe, expect, test } from "vitest";
import { explainShortfall, type Figure, formatFigure } from "#lib/figure";
import { measured } from "#lib/quantity";
import { filteredTrace, impactPulse, samplingFor, type Trace, type TraceQuestion, traceResults } from "#lib/trace";
import { recordedPulse, traceOf } from "./pulses";

const question: TraceQuestion = {
  filter: 1000,
  leadIn: "free-fall",
  dropHeight: measured("distance", 0.61),
  criterionWindow: "any-length",
};
/** A half-sine that takes a drop of 610 mm to a stop and gives some of it back. */
const drop = recordedPulse(110, 0.008, 160, 400, 1.7);
const knownValue = (figure: Figure): number => (figure.kind === "known" ? figure.value : Number.NaN);
const reasonOf = (figure: Figure): string => (figure.kind === "unknown" ? explainShortfall(figure.because) : "known");

describe("traceResults", () => {
  const results = traceResults(drop, question);

  test("tells level, speeds, penetration and returned energy of a drop", () => {
    expect(formatFigure(results.peakLevel, "us")).toBe("110 g");
    expect(knownValue(results.pulseDuration)).toBeCloseTo(0.008 * (1 - (2 * Math.asin(0.02)) / Math.PI), 4);
    const speed = Math.sqrt(2 * 9.80665 * 0.61);
    expect(knownValue(results.velocityChange) - knownValue(results.reboundVelocity)).toBeCloseTo(speed, 9);
    expect(knownValue(results.energyReturned)).toBeCloseTo((knownValue(results.reboundVelocity) / speed) ** 2, 9);
    expect(knownValue(results.penetration)).toBeGreaterThan(0.61 / 110);
    expect(formatFigure(results.impactVelocity, "metric")).toMatch(/^\d\.\d\d–\d\.\d\d m\/s$/);
    expect(results.agreement).toEqual({
      kind: "agrees",
      why: expect.stringMatching(/, as the rebound is not measured: the stated one lies there, give or take 3 %\.$/),
    });
  });

  test("says what was done to the trace", () =>
    expect(results.notes).toEqual([
      "The trace went through the low-pass filter of channel frequency class 1000 of SAE J211-1, forwards and backwards.",
      expect.stringMatching(
        /^The mean of 36\d samples before the impact, 1\.7 g, counts as zero; they scatter by 0\.0 g/,
      ),
    ]));

  test("leaves out what needs the drop height where nobody states it", () => {
    const without = traceResults(drop, { ...question, dropHeight: null });
    expect(reasonOf(without.penetration)).toBe("This figure needs the drop height.");
    expect(without.agreement.why).toBe("No drop height is stated.");
  });

  test("says when a trace is too weak or too strong for the stated height", () => {
    const from = (height: number) => traceResults(drop, { ...question, dropHeight: measured("distance", height) });
    expect(from(2).agreement.kind).toBe("trace-too-weak");
    expect(reasonOf(from(2).energyReturned)).toBe(
      "No figure for motion after the impact: The drop height gives 20.55 ft/s (6.26 m/s) at impact; the trace fits 8.88–17.77 ft/s (2.71–5.41 m/s), which is less. Check the calibration, the drop height and whether the whole pulse was recorded.",
    );
    expect(from(0.1).agreement.kind).toBe("trace-too-strong");
  });

  test("takes the speed from the time of fall where the release was recorded", () => {
    const falls = Math.sqrt((2 * 0.61) / 9.80665);
    const interval = 0.00005;
    const still = Array<number>(2000).fill(1);
    const falling = Array<number>(Math.round(falls / interval)).fill(0);
    const trace = traceOf([...still, ...falling, ...recordedPulse(110, 0.008, 160, 0).levels, 0, 0, 0], interval);
    const found = traceResults(trace, { ...question, filter: "unfiltered", leadIn: "hanging-then-free-fall" });
    expect(knownValue(found.impactVelocity)).toBeCloseTo(Math.sqrt(2 * 9.80665 * 0.61), 2);
    expect(found.agreement.kind).toBe("agrees");
  });

  test("tells no duration of half a pulse", () => {
    const half: Trace = { ...drop, levels: drop.levels.slice(0, 490) };
    const found = traceResults(half, { ...question, filter: "unfiltered" });
    expect(reasonOf(found.pulseDuration)).toBe("This figure needs a trace that holds the whole pulse.");
    expect(found.notes).toContain(
      "The trace does not hold the whole pulse, so duration, speeds and penetration can't be told.",
    );
  });

  test("wonders about a trace that is upside down, and finds no impact in it", () => {
    const turned = traceOf(
      drop.levels.map((level) => -level),
      drop.interval,
    );
    expect(traceResults(turned, question).notes).toContain(
      "The strongest reading is below zero. If the sensor is mounted upside down, turn the trace over.",
    );
    const still = traceResults(traceOf(Array<number>(100).fill(0), 0.0001), question);
    expect(reasonOf(still.peakLevel)).toBe("This figure needs a trace that shows an impact.");
  });

  test("notes samples slower than the class asks for, and refuses those too slow to filter", () => {
    const slow = recordedPulse(110, 0.008, 40, 100);
    expect(traceResults(slow, question).notes).toContain(
      "The trace has 5,000 samples a second; class 1000 asks for 10,000, so peaks may be cut.",
    );
    expect(samplingFor(1000, 1 / 4000)).toBe("too-slow-to-filter");
    expect(() => filteredTrace(traceOf(Array<number>(50).fill(0), 1 / 4000), 1000)).toThrow(RangeError);
  });
});

test("the pulse ends where the level first falls through the threshold", () =>
  expect(impactPulse(traceOf([0, 0, 50, 100, 50, 0, 60, 0], 0.001))).toEqual({
    peak: 3,
    onset: 1.04,
    end: 4.96,
    threshold: 2,
    recorded: "whole",
  }));
