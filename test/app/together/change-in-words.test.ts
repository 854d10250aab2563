import { describe, expect, test } from "vitest";
import {
  byInWords,
  placeInWords,
  valueInWords,
} from "../../../app/project/[id]/conflict/[kind]/[document]/_choices/change-in-words";

const mine = {
  valueFunction: { upperEnd: "9" },
  prices: [
    { id: "x", name: "Base bid", amount: "$1" },
    { id: "y", amount: "$2" },
  ],
};

describe("a place at which two versions differ", () => {
  test("is named by its keys, an entry of a list by its number and name", () => {
    expect(placeInWords(["valueFunction", "upperEnd"], [mine])).toBe("value function · upper end");
    expect(placeInWords(["prices", "x", "amount"], [mine])).toBe("prices · 1 (Base bid) · amount");
    expect(placeInWords(["prices", "y"], [{ prices: [] }, mine])).toBe("prices · 2");
    expect(placeInWords(["prices", "order"], [mine])).toBe("prices · order");
    expect(placeInWords(["prices", "gone"], [mine])).toBe("prices · gone");
  });

  test("shows its text, what is empty, what is not there, and the fields of an entry that differ", () => {
    expect(valueInWords("3 lb/ft²", "")).toEqual(["3 lb/ft²"]);
    expect(valueInWords("", "3 lb/ft²")).toEqual(["empty"]);
    expect(valueInWords([], undefined)).toEqual(["empty"]);
    expect(valueInWords(undefined, "")).toEqual(["not there"]);
    expect(valueInWords(true, false)).toEqual(["yes"]);
    expect(valueInWords(["b", "a"], ["a", "b"])).toEqual(["1. b", "2. a"]);
    expect(valueInWords({ id: "x", name: "Base bid", amount: "$1", note: "" }, undefined)).toEqual([
      "name: Base bid",
      "amount: $1",
    ]);
  });

  test("names who changed it", () => {
    const change = { path: ["name"], base: "", mine: "a", theirs: "b" };
    expect((["mine", "theirs", "both"] as const).map((by) => byInWords({ ...change, by }, "Ada Brook"))).toEqual([
      "you",
      "Ada Brook",
      "both",
    ]);
  });
});
