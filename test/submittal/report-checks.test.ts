import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseReportDate, readEdition } from "#lib/claim";
import { plainDate } from "#lib/quantity";
import { type LaboratoryReport, type PrintedAverage, reportChecks, reportFindings } from "#lib/submittal";

const dated = (text: string) => {
  const parsed = parseReportDate(text);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
};
const whole: LaboratoryReport = {
  laboratory: "Test House 1",
  accreditation: "accredited",
  accreditationNumber: "T-100",
  build: "bid-build",
  date: dated("2026-05-03"),
  method: "f1936",
  edition: readEdition("F1936-19"),
  specimen: "S-12",
  expectedSpecimen: "s 12",
  pagesStated: 3,
  pagesPresent: [1, 2, 3],
  averages: [{ label: "Point 1", readings: ["120", "124", "125"], average: "123" }],
};
const expected = { method: "f1936", edition: null, asOf: plainDate("2027-01-10") } as const;
const found = (change: Partial<LaboratoryReport>, against: Parameters<typeof reportFindings>[1] = expected) =>
  reportFindings({ ...whole, ...change }, against).map(
    ({ check, severity, sentence }) => `${check}, ${severity}: ${sentence}`,
  );
const averaged = (average: Omit<PrintedAverage, "label">) => found({ averages: [{ label: "Point 1", ...average }] });

describe("checks of a laboratory report", () => {
  test("find nothing in a report that is whole", () => expect(found({})).toEqual([]));

  test("build, specimen and accreditation", () => {
    expect(found({ build: "other-build" })).toEqual([
      "build-tested, needs an answer: The report is of another build than the one bid, so its figures need not hold for it.",
    ]);
    expect(found({ specimen: "" })).toEqual([
      "sample-identity, needs an answer: The report does not say which specimen was tested.",
    ]);
    expect(found({ specimen: "S-13" })).toEqual([
      "sample-identity, needs an answer: The report is of “S-13”, and “s 12” was expected.",
    ]);
    expect(found({ accreditation: "not-stated", laboratory: "" })).toEqual([
      "accreditation-shown, needs an answer: The report does not name the laboratory.",
      "accreditation-shown, needs an answer: The report does not show an accreditation for the method.",
    ]);
    expect(found({ accreditationNumber: "" })).toEqual([
      "accreditation-shown, note: The report gives no accreditation number, so nobody can look it up.",
    ]);
  });

  test("method, edition and date", () => {
    expect(found({ method: null })).toEqual(["method-and-edition, needs an answer: The report names no test method."]);
    expect(found({ method: "f1702-clegg" })).toEqual([
      "method-and-edition, needs an answer: The report is by ASTM F1702, and the clause asks for ASTM F1936. Their figures do not compare.",
    ]);
    expect(found({ edition: readEdition("") })).toEqual([
      "method-and-edition, needs an answer: The report names no edition of ASTM F1936.",
    ]);
    expect(found({ date: null })).toEqual(["date-of-report, needs an answer: The report has no date."]);
    expect(found({ date: dated("2027-02") })).toEqual([
      "date-of-report, needs an answer: The report is dated 2027-02, which is still to come.",
    ]);
    expect(found({ date: dated("2021") })).toEqual([
      "date-of-report, note: The report is dated 2021 and is older than five years.",
    ]);
  });

  test("pages", () => {
    expect(found({ pagesPresent: [1, 3] })).toEqual([
      "missing-pages, needs an answer: The report has 3 pages, and page 2 is missing.",
    ]);
    expect(found({ pagesStated: 5 })).toEqual([
      "missing-pages, needs an answer: The report has 5 pages, and pages 4 and 5 are missing.",
    ]);
    expect(found({ pagesStated: 40 })).toEqual([
      "missing-pages, needs an answer: The report has 40 pages, and 37 of them are missing.",
    ]);
    expect(found({ pagesStated: null })).toEqual([
      "missing-pages, note: The report does not say how many pages it has.",
    ]);
  });

  test("every check fires in one of these and has a title", () => {
    const all = reportFindings(
      {
        ...whole,
        build: "not-stated",
        specimen: "",
        laboratory: "",
        method: null,
        date: null,
        pagesStated: null,
        averages: [{ label: "a", readings: ["1"], average: "2.5" }],
      },
      expected,
    ).map(({ check }) => check);
    expect(reportChecks.filter(({ id, title }) => !all.includes(id) || title === "")).toEqual([]);
  });

  describe("the report’s own averages", () => {
    test("may differ by rounding and no more", () => {
      expect(averaged({ readings: ["120", "125"], average: "122.5" })).toEqual([]);
      expect(averaged({ readings: ["120", "125"], average: "123" })).toEqual([]);
      expect(averaged({ readings: ["120.0", "125.0"], average: "124" })).toEqual([
        "average-arithmetic, needs an answer: Point 1: the report gives 124 as the average of 120.0, 125.0, and their mean is 122.5.",
      ]);
    });

    // three drops of which the first is left out: ASTM F355 and F1936 as described by Penn State University
    test("say where the first drop was left out", () =>
      expect(averaged({ readings: ["100", "130", "140"], average: "135" })).toEqual([
        "average-arithmetic, needs an answer: Point 1: the report gives 135 as the average of 100, 130, 140, and their mean is 123.333. It is the mean without the first reading, 135.",
      ]));

    test("say where a figure is no plain number", () =>
      expect(averaged({ readings: ["100", "> 130"], average: "115" })).toEqual([
        "average-arithmetic, needs an answer: A figure of Point 1 is not printed as a plain number, so its average was not checked.",
      ]));

    test("an average that was rounded from unrounded readings is never told", () => {
      fc.assert(
        fc.property(
          fc.array(fc.double({ min: 50, max: 250, noNaN: true }), { minLength: 1, maxLength: 12 }),
          fc.integer({ min: 0, max: 2 }),
          (values, decimals) => {
            const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
            expect(
              averaged({ readings: values.map((each) => each.toFixed(decimals)), average: mean.toFixed(decimals) }),
            ).toEqual([]);
          },
        ),
      );
    });
  });
});
