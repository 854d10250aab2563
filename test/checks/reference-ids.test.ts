import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import checks from "./cost-decision-ids.json" with { type: "json" };

// The checks of the cost-and-decision reference by their ids: the file that holds each, with words of its test, or why
// none does. What is not held is no capability of ours, a fact of law or a bare observation.

const entries: readonly (readonly [string, string])[] = Object.entries(checks);
const isHeld = (where: string) => !where.startsWith("not held: ");
const root = new URL("../../", import.meta.url);

describe("the ledger of the reference", () => {
  test.each(entries.filter(([, where]) => isHeld(where)))("%s is held where the ledger says", (_, where) => {
    const [, file = "", words = ""] = /^(test\/\S+\.ts): (.+)$/.exec(where) ?? [];
    expect(readFileSync(new URL(file, root), "utf8")).toContain(words);
  });

  test("all 187 checks are in it, and 32 are not held", () => {
    expect(entries).toHaveLength(187);
    expect(entries.filter(([, where]) => !isHeld(where)).map(([id]) => id)).toEqual([
      "PRNG-minstd-10000",
      "PRNG-mt19937-10000",
      "PRNG-mulberry32",
      "exp-value",
      "AHP-RI-later",
      ...["TOPSIS-ideal", "TOPSIS-ideal-exact", "TOPSIS-sep", "TOPSIS-reversal"],
      ...["price-ratio-reversal", "price-ratio-pub", "price-linear-low", "price-linear-range", "price-log"],
      ...["quality-to-price", "WB-combined", "SMAA-interval", "tau-12", "tau-13", "tau-23", "tau-b-ties"],
      ...["bonds-2cfr", "records-years", "TURI-hours"],
      ...["contrast-000000", "contrast-767676", "contrast-777777", "contrast-0000FF", "contrast-949494"],
      ...["contrast-limits", "adaII-dates", "csv-number"],
    ]);
  });
});
