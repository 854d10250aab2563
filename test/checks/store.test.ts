import { describe, expect, test } from "vitest";
import { canonicalJson } from "#lib/store";

describe("canonical JSON", () => {
  // RFC 8785, section 3.2.2: the sample and its canonical form (3.2.4 gives the same as bytes)
  test("is that of the sample in RFC 8785", () => {
    const sample = JSON.parse(String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`);
    expect(canonicalJson(sample)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  // RFC 8785, section 3.2.3: members are sorted by the UTF-16 code units of their names
  test("sorts members as RFC 8785 does", () => {
    const sample = JSON.parse(String.raw`{
      "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"
    }`);
    const order = [...canonicalJson(sample).matchAll(/:"([^"]*)"/g)].map(([, name]) => name);
    expect(order).toStrictEqual([
      "Carriage Return",
      "One",
      "Control",
      "Latin Small Letter O With Diaeresis",
      "Euro Sign",
      "Emoji: Grinning Face",
      "Hebrew Letter Dalet With Dagesh",
    ]);
  });
});
