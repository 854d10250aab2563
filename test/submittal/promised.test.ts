import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { comparability, type PropertyId, properties, propertyOf, type StatedMethod } from "#lib/claim";
import {
  inColumn,
  type PromiseColumn,
  type PromiseEntry,
  promisedColumns,
  promisedRows,
  rowFindings,
  sharesRow,
} from "#lib/submittal";
import { requirementsFrom } from "../requirement/clauses";

const entry = (change: Partial<PromiseEntry>): PromiseEntry => ({
  property: "g-max",
  method: "f1936",
  column: { kind: "bid" },
  value: "118 g",
  detail: "",
  span: { low: 118, high: 118 },
  choice: null,
  limit: null,
  years: 0,
  document: "",
  page: "",
  owner: { kind: "project" },
  ...change,
});
const level = (grams: number, column: PromiseColumn, change: Partial<PromiseEntry> = {}) =>
  entry({ column, value: `${grams} g`, span: { low: grams, high: grams }, ...change });
const limit = () => {
  const [requirement] = requirementsFrom(
    [],
    [
      {
        id: "hard",
        label: "Hardness",
        reason: "Players fall.",
        measure: "g-max.f355-a",
        limit: { kind: "below", limit: "165 g" },
      },
    ],
  );
  if (requirement === undefined) throw new Error("a clause makes a requirement");
  return requirement.limit;
};
const specified = (years: number | null) =>
  entry({ column: { kind: "specified" }, value: "below 165 g", span: null, limit: limit(), years });
const deviations = (...entries: readonly PromiseEntry[]) =>
  promisedRows(entries).map((row) => rowFindings(row, { sameWithin: 0.02, units: "us" }).deviations);

const anyEntry: fc.Arbitrary<PromiseEntry> = fc
  .constantFrom(...properties.filter(({ methods }) => methods.length > 1).map(({ id }) => id))
  .chain((property: PropertyId) =>
    fc
      .record({
        method: fc.constantFrom<StatedMethod>("not-stated", ...propertyOf(property).methods),
        year: fc.integer({ min: 1, max: 12 }),
      })
      .map(({ method, year }) => entry({ property, method, column: { kind: "year", year } })),
  );

describe("rows of promises and measurements", () => {
  test("unlike methods never stand in one row, and every entry stands in exactly one", () =>
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 30 }), (entries) => {
        const rows = promisedRows(entries);
        expect(rows.reduce((sum, row) => sum + row.entries.length, 0)).toBe(entries.length);
        for (const row of rows) {
          for (const one of row.entries)
            for (const other of row.entries) {
              expect(one.property).toBe(other.property);
              if (one.method === other.method) continue;
              if (one.method === "not-stated" || other.method === "not-stated")
                throw new Error("a figure without method");
              expect(comparability(one.property, one.method, other.method).kind).toBe("comparable");
            }
        }
      }),
    ));

  test("the same figures make the same rows in whichever order they come", () =>
    fc.assert(
      fc.property(fc.array(anyEntry, { maxLength: 20 }), (entries) => {
        const groups = (of: readonly PromiseEntry[]) =>
          promisedRows(of)
            .map((row) =>
              row.entries
                .map((each) => entries.indexOf(each))
                .sort((a, b) => a - b)
                .join(","),
            )
            .sort();
        expect(groups(entries.toReversed())).toEqual(groups(entries));
      }),
    ));

  // ASTM F1702, scope: figures by another missile mass or geometry do not compare
  test("a figure by a small hammer stands in a row of its own", () => {
    expect(sharesRow(entry({}), entry({ method: "clegg-on-turf" }))).toBe(false);
    expect(sharesRow(entry({}), entry({ method: "f355-a" }))).toBe(true);
    expect(promisedRows([entry({}), entry({ method: "clegg-on-turf" }), entry({ method: "f355-a" })])).toHaveLength(2);
  });

  test("the columns follow the job, with every year that was measured", () => {
    const rows = promisedRows([level(120, { kind: "year", year: 3 }), level(120, { kind: "year", year: 1 })]);
    expect(promisedColumns(rows).map((column) => (column.kind === "year" ? column.year : column.kind))).toEqual([
      "specified",
      "bid",
      "submitted",
      "accepted",
      1,
      3,
      "guaranteed",
    ]);
    expect(rows.flatMap((row) => inColumn(row, { kind: "year", year: 3 }))).toHaveLength(1);
  });
});

describe("deviations in words", () => {
  test("what was measured is held against the limit, the promise of the same age, and the guarantee", () =>
    expect(
      deviations(
        specified(null),
        level(118, { kind: "bid" }),
        level(127, { kind: "bid" }, { years: 3 }),
        level(119, { kind: "submitted" }),
        level(130, { kind: "accepted" }),
        level(168, { kind: "year", year: 3 }, { years: 3 }),
        level(165, { kind: "guaranteed" }, { years: 8 }),
      ),
    ).toEqual([
      [
        "The test of year 3 gave 168 g, which does not meet what is specified, below 165 g.",
        "The acceptance test gave 130 g, where the submittal says 119 g: 11 g more, which is weaker.",
        "The test of year 3 gave 168 g, where the bid said 127 g for year 3: 41 g more, which is weaker.",
        "The test of year 3 gave 168 g, which does not keep what is guaranteed, 165 g.",
      ],
    ]));

  test("a limit for the new surface says nothing of later years, and a guarantee ends", () =>
    expect(
      deviations(
        specified(0),
        level(168, { kind: "year", year: 9 }, { years: 9 }),
        level(165, { kind: "guaranteed" }, { years: 8 }),
      ),
    ).toEqual([[]]));

  test("a figure beyond a limit of another age is told and called no breach", () => {
    const [row] = promisedRows([specified(0), level(168, { kind: "year", year: 3 }, { years: 3 })]);
    if (row === undefined) throw new Error("two figures that compare make a row");
    expect(rowFindings(row, { sameWithin: 0.02, units: "us" })).toMatchObject({
      deviations: [],
      notes: [
        "The test of year 3 gave 168 g. What is specified, below 165 g, is for the new surface and says nothing of this age.",
      ],
    });
  });

  test("a figure within the tolerance, or a stronger one, is no deviation", () =>
    expect(
      deviations(level(118, { kind: "bid" }), level(120, { kind: "submitted" }), level(110, { kind: "accepted" })),
    ).toEqual([[]]));

  test("figures that do not compare are not held against each other, and the row says what is missing", () => {
    const rows = promisedRows([
      specified(null),
      level(118, { kind: "bid" }),
      level(68, { kind: "submitted" }, { method: "clegg-on-turf" }),
    ]);
    expect(rows.map((row) => rowFindings(row, { sameWithin: 0.02, units: "us" }))).toEqual([
      {
        deviations: [],
        notes: [],
        gaps: [
          "Nothing was submitted for it by a method that compares.",
          "The finished field was not tested for it by a method that compares.",
        ],
      },
      { deviations: [], notes: [], gaps: [] },
    ]);
  });
});
