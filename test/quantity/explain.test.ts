import { describe, expect, test } from "vitest";
import { type DimensionName, explainQuantity, parseExact, parseQuantity } from "#lib/quantity";

const sentence = (dimension: DimensionName, text: string) => {
  const parsed = parseQuantity(dimension, text);
  return parsed.ok ? `understood: ${JSON.stringify(parsed.value.reading)}` : explainQuantity(parsed.problem);
};

const perArea = "mass per area, for instance in lb/ft², kg/m², g/m² or oz/yd²";
const inLength = "length, for instance in in, mm, ft or cm";
const writeIt = "Write the one you mean, with a comma between thousands and a point before decimals.";
const asNumber =
  "was not understood as a number. Expected digits with a comma between thousands and a point before decimals, for instance 1,234.5, or a fraction, for instance 2-1/4.";

const refusals: readonly [DimensionName, text: string, sentence: string][] = [
  ["arealDensity", "", `Nothing is written here. Expected ${perArea}.`],
  ["arealDensity", "   ", `Nothing is written here. Expected ${perArea}.`],
  ["arealDensity", "9".repeat(201), `The text has 201 characters; at most 200 are read. Expected ${perArea}.`],
  ["arealDensity", "to be decided", `No number was found in “to be decided”. Expected ${perArea}.`],
  ["arealDensity", "n/a", `No number was found in “n/a”. Expected ${perArea}.`],
  ["arealDensity", "± lb/ft²", `No number was found in “± lb/ft²”. Expected ${perArea}.`],
  [
    "arealDensity",
    "sand 3 lb/ft²",
    `“sand” in front of the number was not understood. Expected ${perArea}, with the number first.`,
  ],
  ["arealDensity", "1.234,5 kg/m²", `“1.234,5” can be read as 1,234.5 or as 1.2345. ${writeIt}`],
  ["arealDensity", "1 234,5 g/m²", `“1 234,5” can be read as 1,234.5 or as 12,345. ${writeIt}`],
  ["arealDensity", "1,23 kg/m²", `“1,23” can be read as 1.23 or as 123. ${writeIt}`],
  ["arealDensity", "0,500 kg/m²", `“0,500” can be read as 0.5 or as 500. ${writeIt}`],
  ["mass", "1 234 lb", `“1 234” can be read as 1,234 or as the separate numbers 1 and 234. ${writeIt}`],
  [
    "linearDensity",
    "10800/8 denier",
    `“10800/8” can be read as the fraction 1,350 or as the separate numbers 10800 and 8. ${writeIt}`,
  ],
  ["length", "1.2.3 in", `“1.2.3” ${asNumber}`],
  ["length", "1/0 in", `“1/0” ${asNumber}`],
  ["mass", "1.234.567 kg", `“1.234.567” ${asNumber}`],
  [
    "mass",
    "1e99 lb",
    "“1e99” is beyond the numbers that can be kept here. Expected mass, for instance in lb, kg, g or t below 1,000,000,000,000,000.",
  ],
  ["arealDensity", "3", `“3” has no unit. Expected ${perArea}.`],
  ["arealDensity", "9 ± 5 %", `“9” has no unit. Expected ${perArea}.`],
  ["length", "min 2", `“2” has no unit. Expected ${inLength}.`],
  ["money", "388,000", "“388,000” has no unit. Expected money, for instance in $."],
  [
    "fraction",
    "3",
    "“3” has no unit, so it could mean 3 % or 3 times the whole. Write it with a percent sign, for instance “3 %”.",
  ],
  ["arealDensity", "3 lbb/ft²", "The unit “lbb/ft²” is not known here. Did you mean lb/ft²?"],
  ["infiltrationRate", "10 in/j", "The unit “in/j” is not known here. Did you mean in/h?"],
  ["arealDensity", "3 stone per furlong", `The unit “stone per furlong” is not known here. Expected ${perArea}.`],
  ["money", "$388k", "The unit “$ k” is not known here. Expected money, for instance in $."],
  ["money", "¥388,000", "The unit “¥” is not known here. Expected money, for instance in $."],
  [
    "moneyPerArea",
    "€4.85",
    "“€” is a unit of money. Expected money per area, for instance in €/ft², €/m², €/yd² or cent/ft².",
  ],
  ["mass", "240 T", "The unit “T” can be read as t or as short ton. Write the one you mean."],
  ["arealDensity", "3 kg", `“kg” is a unit of mass. Expected ${perArea}.`],
  ["arealDensity", "40 oz", `“oz” is a unit of mass. Expected ${perArea}.`],
  ["arealDensity", "97 pcf", `“pcf” is a unit of density. Expected ${perArea}.`],
  ["arealDensity", "3 %", `“%” is a unit of share. Expected ${perArea}.`],
  ["arealDensity", "5 lb", `“lb” is a unit of mass or force. Expected ${perArea}.`],
  ["length", "2 ft²", `“ft²” is a unit of area. Expected ${inLength}.`],
  ["length", "$5", `“$” is a unit of money. Expected ${inLength}.`],
  ["count", "5 kg", "“kg” is a unit of mass. Expected count as a plain number."],
  ["length", "3 – 2 in", "The range runs from “3” down to “2 in”. Write the smaller figure first."],
  ["length", "1 ft – 6 in", "The range runs from “1 ft” down to “6 in”. Write the smaller figure first."],
  ["length", "-3 in", "“-3 in” is below zero. Expected length of zero or more."],
  [
    "temperature",
    "-500 °F",
    "“-500 °F” is below absolute zero. Expected a temperature that can occur, for instance 70 °F.",
  ],
  ["arealDensity", "9 lb/ft² ± -1", `“-1” is below zero. Expected mass per area of zero or more.`],
  [
    "arealDensity",
    "min 2–3 lb/ft²",
    "“min 2–3 lb/ft²” gives a minimum or a maximum together with another limit. Expected one of the two, for instance “at least 2” or “2 to 3”.",
  ],
  [
    "arealDensity",
    "min 2 lb/ft² max",
    "“min 2 lb/ft² max” gives a minimum or a maximum together with another limit. Expected one of the two, for instance “at least 2” or “2 to 3”.",
  ],
  [
    "arealDensity",
    "from 2 lb/ft²",
    "“from 2 lb/ft²” starts a range, but only one figure was read. Expected two, for instance “from 2 to 3” or “between 2 and 3”.",
  ],
  [
    "arealDensity",
    "3 lb/ft² of sand",
    `“3 lb/ft²” was understood, “of sand” after it was not. Expected ${perArea} and nothing else.`,
  ],
  [
    "arealDensity",
    "3 lb/ft², sand",
    `“3 lb/ft²” was understood, “, sand” after it was not. Expected ${perArea} and nothing else.`,
  ],
  [
    "arealDensity",
    "2 lb/ft² sand – 3 lb/ft²",
    `“2 lb/ft²” was understood, “sand - 3 lb/ft²” after it was not. Expected ${perArea} and nothing else.`,
  ],
  [
    "arealDensity",
    "2 lb/ft² –",
    `“2 lb/ft²” was understood, “-” after it was not. Expected ${perArea} and nothing else.`,
  ],
  [
    "distance",
    "5 ft 3",
    "“5 ft” was understood, “3” after it was not. Expected distance, for instance in ft, m, in or mm and nothing else.",
  ],
];

describe("explainQuantity", () => {
  test.each(refusals)("says what was read in %s “%s” and what was expected", (dimension, text, wanted) =>
    expect(sentence(dimension, text)).toBe(wanted),
  );
  test("says that a range is not one number", () => {
    const parsed = parseExact("length", "2–3 in");
    expect(parsed.ok ? "" : explainQuantity(parsed.problem)).toBe(
      `“2–3 in” is not one single number. Expected ${inLength}, without a range, a limit or a tolerance.`,
    );
  });
});
