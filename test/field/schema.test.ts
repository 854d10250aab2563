import { describe, expect, test } from "vitest";
import { climateSchema, useProfileSchema } from "#lib/field";

describe("useProfileSchema", () => {
  test("reads hours a year and a description", () => {
    const { hoursPerYear, description } = useProfileSchema.parse({
      hoursPerYear: "1,800 h/year",
      description: " School sport ",
    });
    expect(hoursPerYear.value).toBe(1800);
    expect(description).toBe("School sport");
  });

  test("refuses more hours than a year has", () => {
    const parsed = useProfileSchema.safeParse({ hoursPerYear: "9,000 h/year", description: "" });
    expect(parsed.error?.issues).toMatchObject([
      { path: ["hoursPerYear"], message: "“9,000 h/year” was read as 9,000 h/year. Expected at most 8,760 h/year." },
    ]);
  });
});

describe("climateSchema", () => {
  test("reads a temperature", () => {
    const { hottestSummerAir } = climateSchema.parse({ description: "", hottestSummerAir: "95 °F", frost: "yes" });
    expect(hottestSummerAir?.value).toBeCloseTo(308.15, 9); // 95 °F is 35 °C exactly
  });

  test("keeps an empty temperature as not stated", () => {
    const climate = climateSchema.parse({ description: "Mild", hottestSummerAir: "", frost: "not-stated" });
    expect(climate.hottestSummerAir).toBeNull();
  });

  test("says what is expected of a temperature that does not read", () => {
    const parsed = climateSchema.safeParse({ description: "", hottestSummerAir: "hot", frost: "no" });
    expect(parsed.error?.issues).toMatchObject([
      {
        path: ["hottestSummerAir"],
        message: expect.stringContaining("Expected temperature, for instance in °F or °C."),
      },
    ]);
  });
});
