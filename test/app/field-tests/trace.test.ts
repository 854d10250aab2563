import { describe, expect, test } from "vitest";
import { measured } from "#lib/quantity";
import { suggestedMapping, traceFormat } from "#lib/trace";
import { mappingOf, startingChoice } from "../../../app/project/[id]/field-tests/_tests/trace-choice";
import { traceCurve } from "../../../app/project/[id]/field-tests/_tests/trace-curve";
import { traceReading, usualSettings } from "../../../app/project/[id]/field-tests/_tests/trace-reading";

const peak = 120;
const duration = 0.01;
const rate = 20_000;

/** A half sine of 120 g and 10 ms after 10 ms of free fall. */
const halfSine = (heading: string) =>
  [heading]
    .concat(
      Array.from({ length: 601 }, (_, index) => {
        const time = index / rate;
        const inside = time >= 0.01 && time <= 0.01 + duration;
        const level = inside ? peak * Math.sin((Math.PI * (time - 0.01)) / duration) : 0;
        return `${(time * 1000).toFixed(3)},${level.toFixed(6)}`;
      }),
    )
    .join("\n");

const choiceFor = (text: string) => {
  const format = traceFormat(text);
  if (!format.ok) throw new Error("the file reads");
  return startingChoice(suggestedMapping(format.value), format.value);
};

describe("startingChoice", () => {
  test("takes columns and units from the headings", () =>
    expect(choiceFor(halfSine("time (ms),acceleration (g)"))).toMatchObject({
      time: "column",
      timeColumn: 1,
      timeUnit: "ms",
      accelerationColumn: 2,
      accelerationUnit: "g",
    }));

  test("asks for a unit that nothing tells", () =>
    expect(mappingOf(choiceFor(halfSine("time,acceleration")))).toEqual({
      ok: false,
      problem: [
        "Choose the unit of the time: the file does not say it.",
        "Choose the unit of the acceleration: the file does not say it.",
      ],
    }));
});

describe("traceReading", () => {
  const text = halfSine("time (ms),acceleration (g)");

  // derived: the criterion of a half sine of amplitude A and duration T is 0.4146456 · A^2.5 · T
  test("gives level and criterion of a half sine", () => {
    const read = traceReading(text, choiceFor(text), usualSettings);
    const results = read.ok ? read.value : null;
    expect(results?.peakLevel).toMatchObject({ value: expect.closeTo(peak, 4) });
    const closed = 0.4146456 * peak ** 2.5 * duration;
    expect(Math.abs((results?.criterionInterval.value ?? 0) / closed - 1)).toBeLessThan(1e-3);
  });

  test("says on which line something does not read", () => {
    const read = traceReading(text.replace(/^5\.000,.*$/m, "5.000,over"), choiceFor(text), usualSettings);
    expect(read).toEqual({
      ok: false,
      problem: ["Line 102, column 2 reads “over”. Expected a number with “.” before decimals, as on the lines above."],
    });
  });

  test("says what it read of a drop height", () =>
    expect(traceReading(text, choiceFor(text), { ...usualSettings, dropHeight: "0 in" })).toEqual({
      ok: false,
      problem: ["Drop height: “0 in” was read. Expected a height above 0."],
    }));
});

test("a curve with few points keeps the highest sample", () => {
  const levels = Array.from({ length: 10_000 }, (_, index) =>
    measured("impactLevel", index === 4321 ? 300 : index % 7),
  );
  const curve = traceCurve({ trace: { interval: measured("time", 1e-4), levels }, pulse: null }, 200);
  expect(curve.points.length).toBeLessThanOrEqual(220);
  expect(curve.highest).toBe(300);
  expect(curve.points.find(({ level }) => level === 300)?.time).toBeCloseTo(432.1, 9);
});
