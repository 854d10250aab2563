import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainTrace, type Trace, type TraceMapping, traceFormat, traceFromText } from "#lib/trace";

const byTime = (unit: "s" | "ms" | "µs" = "ms"): TraceMapping => ({
  time: { kind: "column", column: 1, unit },
  acceleration: { column: 2, unit: "g", sign: "as-recorded" },
});
const byRate: TraceMapping = {
  time: { kind: "sample-rate", samplesPerSecond: 10_000 },
  acceleration: { column: 1, unit: "m/s²", sign: "turned-over" },
};

const rows = (count: number, row: (at: number) => string) => Array.from({ length: count }, (_, at) => row(at));
const lines = (separator: string, decimal: string) =>
  rows(30, (at) =>
    [(at * 0.1).toFixed(3), (at * 1.5).toFixed(2)].join("|").replaceAll(".", decimal).replace("|", separator),
  );

const read = (text: string, mapping: TraceMapping): Trace => {
  const found = traceFromText(text, mapping);
  if (!found.ok) throw new Error(explainTrace(found.problem));
  return found.value;
};
const complaint = (text: string, mapping: TraceMapping): string => {
  const found = traceFromText(text, mapping);
  return found.ok ? "read" : explainTrace(found.problem);
};

describe("traceFromText", () => {
  test.each([
    [",", "."],
    [";", "."],
    [";", ","],
    ["\t", "."],
    ["\t", ","],
    ["  ", "."],
    [" ", ","],
  ])("finds what separates columns and decimals: %j and %j", (separator, decimal) => {
    const trace = read(
      ["time (ms)|a (g)".replace("|", separator), ...lines(separator, decimal)].join("\r\n"),
      byTime(),
    );
    expect(trace.interval).toBeCloseTo(0.0001, 12);
    expect(trace.levels[3]).toBe(4.5);
    expect(trace.levels).toHaveLength(30);
  });

  test("reads one column at a stated rate, turns it over and turns m/s² into g", () => {
    const trace = read(rows(25, (at) => `${at * -9.80665}`).join("\n"), byRate);
    expect(trace.interval).toBe(0.0001);
    expect(trace.levels[7]).toBeCloseTo(7, 12);
  });

  test("skips a heading of several lines and a byte order mark", () => {
    const text = `\uFEFFTest 12\nRate;20000\nTime;Acceleration\ns;g\n${rows(30, (at) => `${at / 20_000};${at}`).join("\n")}\n\n`;
    expect(read(text, byTime("s")).interval).toBeCloseTo(1 / 20_000, 12);
    expect(traceFormat(text)).toMatchObject({
      ok: true,
      value: {
        firstDataLine: 5,
        headings: [expect.stringContaining("Time s"), expect.stringContaining("Acceleration g")],
      },
    });
  });

  test("gives back any trace that was written with enough digits", () => {
    const level = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.array(level, { minLength: 20, maxLength: 60 }), (levels) => {
        const text = ["t ms;a g", ...levels.map((at, index) => `${index * 0.05};${at}`)].join("\n");
        expect(read(text, byTime()).levels).toEqual(levels.map((at) => at + 0));
      }),
    );
  });

  const good = ["time;a", ...rows(30, (at) => `${at};${at}.5`)];
  const withLine = (line: number, text: string) => good.with(line - 1, text).join("\n");
  test.each([
    [
      "a word among the numbers",
      withLine(12, "10;fault"),
      "Line 12, column 2 reads “fault”. Expected a number with “.” before decimals, as on the lines above.",
    ],
    [
      "a short line",
      withLine(12, "10"),
      "Line 12 reads “10” and has nothing in column 2. Expected a number there, as on the lines above.",
    ],
    [
      "an empty line",
      withLine(12, ""),
      "Line 12 reads “” and has nothing in column 1. Expected a number there, as on the lines above.",
    ],
    [
      "a time that goes back",
      withLine(12, "8;1.5"),
      "On line 12 the time is “8” after “9”. Expected times that rise from line to line.",
    ],
    [
      "a lost sample",
      good.toSpliced(14, 1).join("\n"),
      "Before line 15, time “14”, the step is 2 ms; the usual one is 1 ms. Expected even steps, without a sample missing.",
    ],
    [
      "a level beyond all sensors",
      withLine(12, "10;123456"),
      "Line 12 gives an acceleration of “123456”. Expected at most 10,000 g; is the unit the right one?",
    ],
    ["few samples", good.slice(0, 15).join("\n"), "The file holds 14 samples. Expected at least 20."],
    [
      "no numbers",
      "hello\nworld",
      "No lines of numbers were found; the file begins with “hello”. Expected one sample on each line: a time and an acceleration, or an acceleration alone.",
    ],
  ])("refuses %s as a whole", (_, text, sentence) => expect(complaint(text, byTime())).toBe(sentence));

  test("asks where two readings give different numbers", () =>
    expect(complaint(rows(30, (at) => `${at},5`).join("\n"), byTime())).toBe(
      "Line 1, “0,5”, can be read as one column with “,” before decimals or as 2 columns with a comma between them and “.” before decimals. Put a heading above each column, or separate the columns with semicolons or tabs.",
    ));
  test("lets a heading decide between them", () => {
    const values = rows(30, (at) => `${at},5`);
    expect(read(["a (g)", ...values].join("\n"), byRate).levels[2]).toBeCloseTo(-2.5 / 9.80665, 12);
    expect(read(["time,a", ...values].join("\n"), byTime()).levels[2]).toBe(5);
  });

  test("names a column that is not there, or named twice", () => {
    const mapping = { ...byTime(), acceleration: { column: 3, unit: "g", sign: "as-recorded" } } as const;
    expect(complaint(good.join("\n"), mapping)).toBe("Column 3 was asked for; the file has 2 columns of numbers.");
    expect(complaint(good.join("\n"), { ...mapping, acceleration: { ...mapping.acceleration, column: 1 } })).toBe(
      "Column 1 is named for the time and for the acceleration. Expected two different columns.",
    );
  });
  test("asks about the unit where the pace is out of reach", () =>
    expect(complaint(good.join("\n"), byTime("s"))).toBe(
      "The samples come at 1 a second. Expected 500 to 10,000,000 a second; is the unit of the time the right one?",
    ));
  test("refuses what is too large", () => {
    expect(complaint("x".repeat(8_000_001), byTime())).toBe(
      "The file has 8,000,001 characters; at most 8,000,000 are read. Cut it down to the impact.",
    );
    expect(complaint(rows(200_001, () => "1").join("\n"), byRate)).toBe(
      "The file holds 200,001 samples; at most 200,000 are read. Cut it down to the impact.",
    );
  });
  test("reads any text at all as a trace or a problem", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("1", ",", ".", ";", "\n", "\t", " ", "-", "e", '"', "x") }),
        (text) => {
          expect(["read", "a sentence"]).toContain(/\.$|\?$/.test(complaint(text, byTime())) ? "a sentence" : "read");
        },
      ),
    );
  });
});
