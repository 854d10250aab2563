import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readEdition } from "#lib/claim";

describe("readEdition", () => {
  test.each([
    ["F1936-19", 2019],
    ["ASTM F 1936-10(2015)", 2010],
    ["F355 – 16e1", 2016],
    ["-98", 1998],
    ["2019", 2019],
    ["2015 handbook", 2015],
    ["EN 14808:2005", 2005],
    ["EN 71-3:2019+A1:2021", 2019],
    ["EN 15330-1:2013", 2013],
    ["F1936", null],
    ["ASTM F 1936", null],
    ["EN 15330-1", null],
    ["the latest", null],
    ["", null],
  ])("reads the year of “%s”", (text, year) => expect(readEdition(text)).toEqual({ text, year }));

  test("reads the same year with two digits or four", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1940, max: 2039 }), fc.integer({ min: 1, max: 9999 }), (year, number) => {
        const short = String(year % 100).padStart(2, "0");
        expect(readEdition(`F${number}-${short}`).year).toBe(year);
        expect(readEdition(`F${number}-${year}`).year).toBe(year);
      }),
    );
  });
});
