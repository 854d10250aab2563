import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { baseline } from "#lib/trace";
import { recordedPulse, traceOf } from "./pulses";

describe("baseline", () => {
  test("is the mean before the impact, whatever the offset", () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), fc.integer({ min: 20, max: 200 }), (offset, quiet) => {
        const found = baseline(recordedPulse(120, 0.01, 100, quiet, offset), "free-fall");
        expect(found.kind === "removed" ? found.level : Number.NaN).toBeCloseTo(offset, 9);
      }),
    );
  });

  test("is left alone where the impact begins at once", () =>
    expect(baseline(recordedPulse(120, 0.01, 100, 4), "free-fall")).toEqual({
      kind: "not-removed",
      because: "too-few-quiet-samples",
      quietSamples: 6,
    }));

  const hung = (before: number, after: number) =>
    traceOf(
      [
        ...Array<number>(300).fill(before),
        ...Array<number>(700).fill(after),
        ...recordedPulse(100, 0.01, 20, 0).levels,
      ],
      0.0005,
    );
  test("is the level after the release of a missile that hung still", () =>
    expect(baseline(hung(1.4, 0.4), "hanging-then-free-fall")).toMatchObject({
      kind: "removed",
      level: expect.closeTo(0.4, 9),
      release: 300,
    }));
  test("needs a fall of about 1 g to call it the release", () =>
    expect(baseline(hung(0.9, 0.4), "hanging-then-free-fall")).toMatchObject({
      kind: "not-removed",
      because: "no-release-found",
    }));
});
