import { describe, expect, test } from "vitest";
import type { Figure } from "#lib/figure";
import { measured } from "#lib/quantity";
import {
  filterConstants,
  filteredTrace,
  headInjuryCriterion,
  impactPulse,
  penetration,
  speedChange,
  traceResults,
} from "#lib/trace";
import { pulseOf, recordedPulse, type Shape, shapes, traceOf } from "../trace/pulses";

const steps = 8000;
const criterion = (shape: Shape, peak: number, duration: number) =>
  headInjuryCriterion(pulseOf(shape, peak, duration, steps), "any-length");

describe("the head injury criterion against closed forms", () => {
  // derived: criterion = K · peak^2.5 · duration; best interval as a share of the duration
  test.each<readonly [shape: Shape, factor: number, share: number]>([
    ["rectangle", 1, 1],
    ["parabola", 0.448262, Math.SQRT1_2],
    ["half-sine", 0.4146456, 0.67023],
    ["haversine", 0.302939, 0.507592],
    ["triangle", 0.2464007, 4 / 7],
    ["leaning triangle", 0.2464007, 4 / 7],
  ])("%s", (shape, factor, share) => {
    const { value, from, to } = criterion(shape, 100, 0.01);
    expect(value).toBeCloseTo(factor * 100 ** 2.5 * 0.01, 2);
    expect((to - from) / 0.01).toBeCloseTo(share, 3);
  });

  // derived: K · peak^2.5 · duration, confirmed by trying every pair of 2001 samples
  test.each<readonly [shape: Shape, peak: number, milliseconds: number, wanted: number, decimals: number]>([
    ["half-sine", 100, 10, 414.646, 3],
    ["triangle", 100, 10, 246.401, 3],
    ["rectangle", 100, 10, 1000, 6],
    ["half-sine", 150, 10, 1142.63, 2],
    ["triangle", 150, 10, 679.0, 2],
    ["rectangle", 150, 10, 2755.68, 2],
    ["half-sine", 200, 8, 1876.47, 2],
    ["triangle", 200, 8, 1115.08, 2],
    ["rectangle", 200, 8, 4525.48, 2],
    ["half-sine", 200, 4.2633, 1000, 1],
  ])("%s of %i g over %f ms", (shape, peak, milliseconds, wanted, decimals) =>
    expect(criterion(shape, peak, milliseconds / 1000).value).toBeCloseTo(wanted, decimals),
  );

  // derived: 100^2.5 · 0.015 and 100^2.5 · 0.020
  test("caps the interval at 15 or 36 ms", () => {
    const long = pulseOf("rectangle", 100, 0.02, 2000);
    expect(headInjuryCriterion(long, "15-ms").value).toBeCloseTo(1500, 6);
    expect(headInjuryCriterion(long, "36-ms").value).toBeCloseTo(2000, 6);
  });

  // derived: a lossless spring from 1.3 m, duration π·v/(peak·g₀); criterion 0.67074 · peak^1.5, 1000 at 130.51 g
  test("is 1000 for a lossless spring of 130.51 g from 1.3 m", () => {
    const duration = (Math.PI * Math.sqrt(2 * 9.80665 * 1.3)) / (130.51 * 9.80665);
    expect(criterion("half-sine", 130.51, duration).value).toBeCloseTo(1000, 0);
  });
});

/** Forty samples of a half-sine of 150 g on a ripple of 3 g and an offset of 2 g; 120 samples. */
const rippled = Array.from(
  { length: 120 },
  (_, at) => (at >= 40 && at < 80 ? 150 * Math.sin((Math.PI * (at - 40)) / 40) : 0) + 3 * Math.sin(2.7 * at) + 2,
);

describe("the low-pass filter against a signal library", () => {
  // SciPy 1.17.1, signal.butter(2, 2077.5, fs=20000): 0.0718931, -1.11158618, 0.39915856
  test("has the constants of a Butterworth filter of two poles", () => {
    const { b0, b1, b2, a1, a2 } = filterConstants(1000, 1 / 20_000);
    expect([b0, b1, b2, a1, a2].map((constant) => Number(constant.toFixed(8)))).toEqual([
      0.0718931, 0.14378619, 0.0718931, -1.11158618, 0.39915856,
    ]);
  });

  // computed with SciPy 1.17.1, signal.filtfilt(b, a, x)
  test("gives class 1000 at 20,000 samples a second to the last digits", () => {
    const { levels } = filteredTrace(traceOf(rippled, 1 / 20_000), 1000);
    const wanted: readonly (readonly [number, number])[] = [
      [0, 1.9945975193077645],
      [1, 2.0024141378610127],
      [20, 1.999668706467614],
      [39, 3.642935583335257],
      [40, 8.238770396458861],
      [50, 108.12169026968428],
      [60, 151.97210897965437],
      [80, 8.238747379419133],
      [90, 2.074847272240583],
      [118, 3.2565904738603937],
      [119, 4.267521208185123],
    ];
    for (const [index, level] of wanted) expect(levels[index]).toBeCloseTo(level, 10);
  });

  // computed with SciPy 1.17.1, signal.filtfilt(b, a, x)
  test("gives class 180 at 10,000 samples a second to the last digits", () => {
    const { levels } = filteredTrace(traceOf(rippled, 1 / 10_000), 180);
    const wanted: readonly (readonly [number, number])[] = [
      [0, 2.0343214721864684],
      [20, 1.4356131635816582],
      [39, 15.994019157989918],
      [41, 27.63458231015393],
      [60, 149.04936080359153],
      [90, -1.3224227768064098],
      [119, 4.1651766197761395],
    ];
    for (const [index, level] of wanted) expect(levels[index]).toBeCloseTo(level, 10);
  });

  // SAE J211-1, from memory: class 1000 is 3 dB down at 1650 Hz; the published constants give −2.8 dB there
  test("takes about 3 dB off at 1650 Hz and next to nothing at 100 Hz", () => {
    const passed = (hertz: number) => {
      const wave = Array.from({ length: 8000 }, (_, at) => 50 * Math.sin((2 * Math.PI * hertz * at) / 20_000));
      const { levels } = filteredTrace(traceOf(wave, 1 / 20_000), 1000);
      return 20 * Math.log10(Math.max(...levels.slice(3000, 5000)) / 50);
    };
    expect(passed(1650)).toBeGreaterThan(-3.2);
    expect(passed(1650)).toBeLessThan(-2.7);
    expect(passed(100)).toBeCloseTo(0, 2);
  });
});

const pulseFound = (trace: Parameters<typeof impactPulse>[0]) => {
  const pulse = impactPulse(trace);
  if (pulse === null) throw new Error("no pulse");
  return pulse;
};

const knownValue = (figure: Figure): number => (figure.kind === "known" ? figure.value : Number.NaN);

describe("motion against closed forms", () => {
  // derived: ∫ A·sin = 2·A·T/π; less 1 g of gravity over the pulse
  test("a half-sine of 100 g over 10 ms changes the speed by 6.145 m/s", () => {
    const trace = recordedPulse(100, 0.01, 4000, 400);
    const pulse = pulseFound(trace);
    const lost = 9.80665 * ((2 * 100 * 0.01) / Math.PI - 0.01);
    // what lies below the threshold of 2 % of the peak: some thousandths of the whole
    expect(speedChange(trace, pulse).change).toBeCloseTo(lost, 2);
  });

  // derived: constant slowing-down over a stop of h/(A − 1): 610 mm and 201 g give 3.05 mm
  test("a rectangle of 201 g stops a drop of 610 mm within 3.05 mm", () => {
    const speed = Math.sqrt(2 * 9.80665 * 0.61);
    const duration = speed / (200 * 9.80665);
    const trace = pulseOf("rectangle", 201, duration * 1.05, 4200);
    const stop = penetration(trace, pulseFound(trace), measured("velocity", speed));
    expect((stop?.depth ?? 0) * 1000).toBeCloseTo(3.05, 3);
    expect(stop?.afterOnset).toBeCloseTo(duration, 7);
  });

  // derived: way 2h/A of a lossless spring, 12.2 mm at 610 mm and 100 g over its weight; the way before the level
  // passes 2.02 g, 2 % of the peak reading of 101 g, is the share 0.0102 of it: 12.2 · (1 − 0.0102) = 12.0756 mm
  test("a lossless spring gives back all energy and gives way by 2h/A", () => {
    const [height, peak] = [0.61, 100];
    const speed = Math.sqrt(2 * 9.80665 * height);
    const duration = (Math.PI * speed) / (peak * 9.80665);
    const levels = Array.from({ length: 4001 }, (_, at) => (at >= 1000 && at <= 3000 ? 1 : 0)).map((inside, at) =>
      inside === 0 ? 0 : 1 + peak * shapes["half-sine"]((at - 1000) / 2000),
    );
    const results = traceResults(traceOf(levels, duration / 2000), {
      filter: "unfiltered",
      leadIn: "free-fall",
      dropHeight: measured("distance", height),
      criterionWindow: "any-length",
    });
    expect(knownValue(results.energyReturned)).toBeGreaterThan(0.98);
    expect(knownValue(results.penetration) * 1000).toBeCloseTo(12.0756, 2);
  });
});
