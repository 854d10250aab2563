import { describe, expect, test } from "vitest";
import { z } from "zod";
import { exactField, plainDateField, quantityField } from "#lib/quantity";

const messages = (schema: z.ZodType, input: unknown) =>
  schema.safeParse(input).error?.issues.map(({ message }) => message);

describe("quantityField", () => {
  test("turns text into the figure", () =>
    expect(quantityField("impactLevel").parse("max 165 g")).toEqual({
      asEntered: "max 165 g",
      dimension: "impactLevel",
      unit: "g",
      reading: { kind: "at-most", high: 165 },
    }));
  test("hands on the sentence of a figure it can't read", () =>
    expect(messages(quantityField("arealDensity"), "3 kg")).toEqual([
      "“kg” is a unit of mass. Expected mass per area, for instance in lb/ft², kg/m², g/m² or oz/yd².",
    ]));
  test("asks for text where something else stands", () =>
    expect(messages(quantityField("arealDensity"), 3)).toEqual([
      "Expected mass per area, for instance in lb/ft², kg/m², g/m² or oz/yd², as text.",
    ]));
  test("is a string in the JSON Schema of the input", () =>
    expect(
      z.toJSONSchema(z.strictObject({ mass: quantityField("mass"), on: plainDateField }), { io: "input" }),
    ).toMatchObject({
      properties: {
        mass: {
          type: "string",
          description: "Text with number and unit: mass, for instance in lb, kg, g or t. At most 200 characters.",
        },
        on: { type: "string", format: "date" },
      },
    }));
});

describe("exactField", () => {
  const field = exactField("length", { above: [0, "in"], atMost: [4, "in"] });
  test("gives one number in SI", () => expect(field.parse("2-1/4 in")).toMatchObject({ value: 0.05715, unit: "in" }));
  test("allows the limit of “at most” and excludes the limit of “above”", () => {
    expect(field.safeParse("4 in").success).toBe(true);
    expect(messages(field, "0 in")).toEqual(["“0 in” was read as 0 in. Expected more than 0 in."]);
    expect(messages(field, "127 mm")).toEqual(["“127 mm” was read as 127 mm. Expected at most 4 in."]);
  });
  test("allows the limit of “at least” and excludes the limit of “below”", () => {
    const rate = exactField("fraction", { atLeast: [-10, "%"], below: [100, "%"] });
    expect(rate.safeParse("-10 %").success).toBe(true);
    expect(messages(rate, "-11 %")).toEqual(["“-11 %” was read as −11 %. Expected at least −10 %."]);
    expect(messages(rate, "100 %")).toEqual(["“100 %” was read as 100 %. Expected less than 100 %."]);
  });
  test("speaks of money with the currency in front", () =>
    expect(messages(exactField("moneyPerArea", { above: [0, "$/ft²"] }), "$-4.85/ft²")).toEqual([
      "“$-4.85/ft²” was read as −$4.85/ft². Expected more than $0/ft².",
    ]));
  test("refuses a range", () =>
    expect(messages(field, "2–3 in")).toEqual([
      "“2–3 in” is not one single number. Expected length, for instance in in, mm, ft or cm, without a range, a limit or a tolerance.",
    ]));
});

describe("plainDateField", () => {
  // 2000 was a leap year, 1900 was not: the rule of the Gregorian calendar.
  test.each(["2026-11-25", "2028-02-29", "2000-02-29"])("takes %s", (day) =>
    expect(plainDateField.parse(day)).toBe(day),
  );
  test.each(["2026-02-30", "1900-02-29", "2026-13-01", "11/25/2026", "2026-11-25T00:00:00Z", ""])(
    "refuses “%s”",
    (text) =>
      expect(messages(plainDateField, text)).toEqual([
        `“${text}” is not a day of the calendar. Expected year-month-day, for instance 2026-11-25.`,
      ]),
  );
});
