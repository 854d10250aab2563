import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { claimSchema } from "#lib/claim";
import { inUnit, plainDate } from "#lib/quantity";
import {
  byUrgency,
  deliverySchema,
  placedFindings,
  registerLine,
  registerSchema,
  reviewLetter,
  reviewReports,
  reviewVersion,
} from "#lib/submittal";
import { requirementsFrom } from "../requirement/clauses";

const requirements = requirementsFrom(
  [],
  [
    {
      ...{ id: "bind", label: "Tuft bind", reason: "Tufts hold.", measure: "tuft-bind.d1335" },
      ...{ limit: { kind: "at-least", limit: "8 lbf" }, edition: "2021" },
    },
    {
      ...{ id: "height", label: "Pile height", reason: "Curbs.", measure: "pile-height.d5823" },
      ...{ limit: { kind: "at-least", limit: "2 in" }, tolerance: "1/8 in" },
    },
  ],
);
const [bind, height] = requirements;
if (bind === undefined || height === undefined) throw new Error("two clauses make two requirements");
const claim = (id: string, property: string, figure: string, method: string, change: object = {}) =>
  claimSchema.parse({ id, property, figure, method, condition: "new", evidence: "stated", ...change });
const bid = [
  claim("bind-year-5", "tuft-bind", "7 lbf", "d1335", { condition: "year 5" }),
  claim("bind", "tuft-bind", "9 lbf", "d1335"),
  claim("height", "pile-height", "2-1/4 in", "d5823"),
];
const setting = { asked: [bind, height], requirements, bid, sameWithin: 0.02 };
const outcomes = (values: readonly ReturnType<typeof claim>[]) =>
  reviewVersion({ values, remarks: {} }, setting).map(({ key, review }) => [
    key,
    review.specification.kind,
    review.bid.kind,
  ]);

describe("the review of a version", () => {
  test("holds each value against its clause and the claim of the bid that compares, and says what did not come", () =>
    expect(
      outcomes([claim("a", "tuft-bind", "8.5 lbf", "d1335"), claim("b", "pile-mass", "40 oz/yd²", "d5848")]),
    ).toEqual([
      ["bind/a", "meets", "weaker"],
      ["no-clause/b", "no-limit", "not-bid"],
      ["height/nothing", "not-shown", "not-shown"],
    ]));

  test("gives a figure its tolerance, and none beyond it", () => {
    expect(outcomes([claim("a", "pile-height", "1-7/8 in", "d5823")])[0]).toEqual(["height/a", "meets", "differs"]);
    expect(outcomes([claim("a", "pile-height", "1-13/16 in", "d5823")])[0]).toEqual([
      "height/a",
      "falls-short",
      "differs",
    ]);
  });

  test("the reviewer’s words stand in place of the draft, and only for their row", () => {
    const values = [claim("a", "tuft-bind", "7 lbf", "d1335")];
    const rows = reviewVersion({ values, remarks: { "bind/a": "Send another roll." } }, setting);
    expect(rows.map(({ comment, isOwnWords }) => [comment, isOwnWords])).toEqual([
      ["Send another roll.", true],
      [expect.stringMatching(/^Pile height: nothing was handed in for it/), false],
    ]);
  });

  test("every value stands in at least one row, whatever was handed in", () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("tuft-bind.d1335", "pile-height.d5823", "pile-mass.d5848"), { maxLength: 8 }),
        (picked) => {
          const values = picked.map((each, index) => {
            const [property = "", method = ""] = each.split(".");
            const figure = property === "tuft-bind" ? "8 lbf" : property === "pile-height" ? "2 in" : "40 oz/yd²";
            return claim(`v-${index}`, property, figure, method);
          });
          const rows = reviewVersion({ values, remarks: {} }, setting);
          for (const { id } of values) expect(rows.some(({ submitted }) => submitted?.id === id)).toBe(true);
          expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
        },
      ),
    ));
});

const register = (versions: readonly object[], due = "") =>
  registerSchema.parse([
    { id: "line", item: "Test report: Tuft bind", kind: "test-report", clauses: ["bind"], due, versions },
  ]);

describe("reports and the answer", () => {
  const [line] = register([
    {
      received: "2027-03-05",
      reviewer: "Architect",
      action: "revise-and-resubmit",
      answered: "2027-03-10",
      reports: [
        { id: "r", clause: "bind", document: "Report 4", method: "d1335", edition: "D1335-05", date: "2027-03-20" },
      ],
    },
  ]);
  if (line === undefined) throw new Error("one line was typed");
  const reports = reviewReports(line.versions[0]?.reports ?? [], requirements, plainDate("2027-03-05"));

  test("a report is read as of the day it came and against the clause it is for", () => {
    const sentences = reports[0]?.findings.map(({ sentence }) => sentence) ?? [];
    expect(sentences).toContain("The report is dated 2027-03-20, which is still to come.");
  });

  test("the answer as text has action, comments and findings", () => {
    const rows = reviewVersion({ values: [], remarks: {} }, { ...setting, asked: [bind] });
    const letter = reviewLetter(line, 0, { rows, reports });
    expect(letter).toMatch(
      /^Test report: Tuft bind, version 1, received 2027-03-05\nRevise and Resubmit, 2027-03-10\./,
    );
    expect(letter).toMatch(/Comments\n1\. Tuft bind: nothing was handed in for it/);
    expect(letter).toContain("Report 4: The report is dated 2027-03-20, which is still to come.");
  });
});

describe("order and placing", () => {
  test("what is late stands ahead of what waits, what is awaited and what is closed", () => {
    const asOf = plainDate("2027-03-20");
    const closed = register([{ received: "2027-03-05", action: "no-exceptions-taken" }]);
    const inReview = register([{ received: "2027-03-15" }]);
    const lines = [...closed, ...register([], "2027-04-01"), ...inReview, ...register([], "2027-03-01")];
    expect(byUrgency(lines.map((item) => registerLine(item, asOf))).map(({ state }) => state.kind)).toEqual([
      "overdue",
      "in-review",
      "awaited",
      "closed",
    ]);
  });

  test("a reading at the tolerance is within it, one beyond is not", () => {
    const { placed } = deliverySchema.parse({
      placed: {
        lines: {
          readings: ["4 in", "4-1/8 in", "3-7/8 in", "4-1/4 in", "3.8 in"].map((reading, index) => ({
            id: `p-${index}`,
            reading,
          })),
        },
      },
    });
    expect(inUnit("length", placed.lines.wanted.value, "in")).toBeCloseTo(4, 12);
    expect(placedFindings(placed.lines.readings, placed.lines).map(({ verdict }) => verdict)).toEqual([
      "within",
      "within",
      "within",
      "too much",
      "too little",
    ]);
  });
});
