import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainReportDate, parseReportDate } from "#lib/claim";
import { anyText } from "./bid-claims";

const span = (text: string) => {
  const parsed = parseReportDate(text);
  if (!parsed.ok) throw new Error(explainReportDate(parsed.problem));
  return parsed.value === null ? null : [parsed.value.earliest, parsed.value.latest];
};
const told = (text: string) => {
  const parsed = parseReportDate(text);
  return parsed.ok ? "read" : explainReportDate(parsed.problem);
};

describe("parseReportDate", () => {
  test.each([
    ["2024-05-03", "2024-05-03", "2024-05-03"],
    ["2024/5/3", "2024-05-03", "2024-05-03"],
    ["May 3, 2024", "2024-05-03", "2024-05-03"],
    ["3 May 2024", "2024-05-03", "2024-05-03"],
    ["3rd  MAY 2024", "2024-05-03", "2024-05-03"],
    ["Sept. 30, 2023", "2023-09-30", "2023-09-30"],
    ["2024-05", "2024-05-01", "2024-05-31"],
    ["May 2024", "2024-05-01", "2024-05-31"],
    ["Feb 2024", "2024-02-01", "2024-02-29"],
    ["February 1900", null, null],
    ["2023", "2023-01-01", "2023-12-31"],
  ])("reads %s", (text, earliest, latest) => {
    if (earliest === null) expect(told(text)).toContain("is not in the calendar between 1950 and 2100");
    else expect(span(text)).toEqual([earliest, latest]);
  });

  test("takes an empty text as no date", () => expect(span("  ")).toBeNull());

  test("keeps the text as written", () => {
    expect(parseReportDate(" May 2024 ")).toMatchObject({ ok: true, value: { text: "May 2024" } });
  });

  test.each([
    [
      "3/5/2024",
      "“3/5/2024” can be read as March 5, 2024 or as May 3, 2024, and numbers alone don’t show which is the month. Write the month as a word, or the year first: 2024-03-05 or 2024-05-03.",
    ],
    [
      "25.12.24",
      "“25.12.24” was read as December 25, 2024, and numbers alone don’t show which is the month. Write the month as a word, or the year first: 2024-12-25.",
    ],
    ["31/31/2024", "“31/31/2024” is not a day of the calendar in either order. Expected for instance 2024-05-03."],
    [
      "2023-02-29",
      "“2023-02-29” is not in the calendar between 1950 and 2100. Expected for instance 2024-05-03, “May 2024” or 2024.",
    ],
    [
      "last spring",
      "“last spring” was not read as a date. Expected for instance 2024-05-03, “May 3, 2024”, “May 2024” or 2024.",
    ],
  ])("explains why it does not read %s", (text, sentence) => expect(told(text)).toBe(sentence));

  test("reads every day alike in every order of its parts that names the month", () => {
    const anyDay = fc.date({
      min: new Date("1950-01-01T00:00:00Z"),
      max: new Date("2100-12-31T00:00:00Z"),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(anyDay, (date) => {
        const iso = date.toISOString().slice(0, 10);
        const written = (locale: string) =>
          new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" }).format(date);
        for (const text of [iso, written("en-US"), written("en-GB")]) expect(span(text)).toEqual([iso, iso]);
      }),
    );
  });

  test("gives a span that holds every day of the month", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1950, max: 2100 }), fc.integer({ min: 0, max: 11 }), (year, month) => {
        const days = (Date.UTC(year, month + 1, 1) - Date.UTC(year, month, 1)) / 86_400_000;
        const inMonth = `${year}-${String(month + 1).padStart(2, "0")}`;
        expect(span(inMonth)).toEqual([`${inMonth}-01`, `${inMonth}-${days}`]);
      }),
    );
  });

  test("never throws, whatever is typed", () => {
    fc.assert(fc.property(anyText, (text) => typeof parseReportDate(text).ok === "boolean"));
  });
});
