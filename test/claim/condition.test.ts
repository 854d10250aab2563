import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Age,
  type Condition,
  conditionsAgree,
  explainCondition,
  formatCondition,
  isConditionStated,
  type Moisture,
  ofAge,
  parseCondition,
} from "#lib/claim";
import { anyText } from "./bid-claims";

const explained = (text: string) => {
  const parsed = parseCondition(text);
  return parsed.ok ? parsed.value : explainCondition(parsed.problem);
};
const read = (text: string): Condition => {
  const parsed = parseCondition(text);
  if (!parsed.ok) throw new Error(explainCondition(parsed.problem));
  return parsed.value;
};

describe("parseCondition", () => {
  test.each<[string, Age]>([
    ["new", { kind: "new" }],
    ["Initial", { kind: "new" }],
    ["as  installed", { kind: "new" }],
    ["year 0", { kind: "new" }],
    ["year 5", { kind: "aged", years: 5 }],
    ["5 years", { kind: "aged", years: 5 }],
    ["aged 5 yr", { kind: "aged", years: 5 }],
    ["after 2.5 years of use", { kind: "aged", years: 2.5 }],
    ["5-year", { kind: "aged", years: 5 }],
    ["18 months", { kind: "aged", years: 1.5 }],
    ["after 2,000 h of use", { kind: "used", hours: 2000 }],
    ["1500 hours of play", { kind: "used", hours: 1500 }],
    ["after 20,000 cycles", { kind: "after-cycles", cycles: 20_000 }],
    ["20200 conditioning cycles", { kind: "after-cycles", cycles: 20_200 }],
    ["", { kind: "not-stated" }],
    ["Not stated", { kind: "not-stated" }],
    ["n/a", { kind: "not-stated" }],
    ["years 3 to 5", { kind: "other", words: "years 3 to 5" }],
    ["24 h after rain", { kind: "other", words: "24 h after rain" }],
    ["wet, then dry, wet", { kind: "other", words: "wet, then dry, wet" }],
    ["new, frozen", { kind: "other", words: "new, frozen" }],
  ])("reads the age in “%s”", (text, age) => expect(explained(text)).toEqual(ofAge(age)));

  test.each<[string, Age["kind"], Moisture, number | null]>([
    ["year 5, wet", "aged", "wet", null],
    ["Dry", "not-stated", "dry", null],
    ["new and dry", "new", "dry", null],
    ["wet, new", "new", "wet", null],
    // NIST SP 811: T/K = (t/°F + 459.67)/1.8 and T/K = t/°C + 273.15
    ["new, 40 °F", "new", "not-stated", 499.67 / 1.8],
    ["after 20,000 cycles, dry, 23 °C", "after-cycles", "dry", 296.15],
    ["dry at 73 F", "not-stated", "dry", 532.67 / 1.8],
    ["Frozen, -5 °C", "other", "not-stated", 268.15],
  ])("reads age, wetness and temperature in “%s”", (text, age, moisture, kelvin) => {
    const condition = read(text);
    expect([condition.age.kind, condition.moisture]).toEqual([age, moisture]);
    const reading = condition.temperature?.reading;
    if (kelvin === null) expect(reading).toBeUndefined();
    else expect(reading?.kind === "exact" ? reading.value : null).toBeCloseTo(kelvin, 9);
  });

  test.each([
    ["new, 0.5 in less infill", "lost", "0.5 in"],
    ["12 mm less infill, new, dry", "lost", "12 mm"],
    ["new, infill lowered by 1/2 in", "lost", "1/2 in"],
    ["new with 0.5 in of infill lost", null, null], // one part: nothing says where the age ends
    ["new, 0.5 in of infill lost", "lost", "0.5 in"],
    ["new, infill loss of 10 mm", "lost", "10 mm"],
    ["new, infill 1.25 in deep", "deep", "1.25 in"],
    ["new, infill depth 32 mm", "deep", "32 mm"],
    ["new, 1.25 in of infill", "deep", "1.25 in"],
    ["new, 30 lb infill", null, null],
    ["new, infill 3 ft deep", null, null],
  ])("reads the infill in “%s”", (text, kind, length) => {
    const { infill, age } = read(text);
    expect([infill?.kind ?? null, infill?.length.asEntered ?? null]).toEqual([kind, length]);
    expect(age.kind).toBe(kind === null ? "other" : "new");
  });

  test.each([
    [
      "year 1,5",
      "The number in “year 1,5” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.",
    ],
    [
      "after 20.000 cycles",
      "The number in “after 20.000 cycles” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.",
    ],
    ["year 500", "“year 500” is longer than 100 years. Expected an age that a field can reach, for instance “year 5”."],
    [
      "900,000 h of use",
      "“900,000 h of use” is more than 500,000 hours. Expected a use that a field can see, for instance “after 2,000 h of use”.",
    ],
    ["0 cycles", "“0 cycles” is not between 1 and 10,000,000 cycles. Expected for instance “after 20,000 cycles”."],
    [
      "new, 400 °F",
      "“400 °F” lies outside −60 °C to 120 °C. Expected the temperature of a surface, for instance “40 °F”.",
    ],
    ["x".repeat(201), "The condition has 201 characters; at most 200 are read. Put the rest in the note."],
  ])("explains why it can't read “%s”", (text, sentence) => expect(explained(text)).toBe(sentence));

  test("never throws", () => {
    fc.assert(fc.property(anyText, (text) => typeof parseCondition(text).ok === "boolean"));
  });
});

const ages = fc.oneof(
  fc.constantFrom<Age>({ kind: "new" }, { kind: "not-stated" }, { kind: "other", words: "frozen" }),
  fc.integer({ min: 1, max: 1200 }).map((months): Age => ({ kind: "aged", years: months / 12 })),
  fc.integer({ min: 1, max: 500_000 }).map((hours): Age => ({ kind: "used", hours })),
  fc.integer({ min: 1, max: 10_000_000 }).map((cycles): Age => ({ kind: "after-cycles", cycles })),
);
const conditions: fc.Arbitrary<Condition> = fc.record({
  age: ages,
  moisture: fc.constantFrom<Moisture>("wet", "dry", "not-stated"),
  temperature: fc.oneof(
    fc.constant(null),
    fc.integer({ min: -40, max: 110 }).map((degrees) => read(`${degrees} °C`).temperature),
    fc.integer({ min: -40, max: 200 }).map((degrees) => read(`at ${degrees}°F`).temperature),
  ),
  infill: fc.oneof(
    fc.constant(null),
    fc.integer({ min: 1, max: 60 }).map((length) => read(`${length} mm less infill`).infill),
    fc.integer({ min: 1, max: 20 }).map((eighths) => read(`infill ${eighths}/8 in deep`).infill),
  ),
});

describe("formatCondition", () => {
  test("writes what parseCondition reads back", () => {
    fc.assert(
      fc.property(conditions, (given) => {
        expect(read(formatCondition(given))).toEqual(given);
      }),
    );
  });

  test("reads to the same condition after one round, whatever was typed", () => {
    const pieces = fc.constantFrom(
      "new",
      "wet",
      "dry",
      "40 °F",
      "at 23 °C",
      "year 5",
      "0.5 in less infill",
      "infill 1 in deep",
      "and",
      "at",
      "frozen",
      ",",
      ";",
    );
    const typed = fc.oneof(
      fc.string({ maxLength: 40 }),
      fc.array(pieces, { maxLength: 6 }).map((words) => words.join(" ").replaceAll(" ,", ",").replaceAll(" ;", ";")),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const parsed = parseCondition(text);
        if (parsed.ok) expect(parseCondition(formatCondition(parsed.value))).toEqual(parsed);
      }),
    );
  });

  test("does not depend on the order in which the parts are written", () => {
    const parts = fc.shuffledSubarray(["year 5", "wet", "40 °F"], { minLength: 3 });
    fc.assert(
      fc.property(parts, (order) => {
        expect(read(order.join(", "))).toEqual(read("year 5, wet, 40 °F"));
      }),
    );
  });
});

describe("conditionsAgree", () => {
  const yearFive = ofAge({ kind: "aged", years: 5 });

  test("holds for the same condition", () => {
    expect(conditionsAgree(yearFive, read("5 years"))).toEqual({ kind: "agree" });
    expect(conditionsAgree(read("Frozen"), read("frozen"))).toEqual({ kind: "agree" });
  });

  test("holds between every stated condition and itself", () => {
    fc.assert(
      fc.property(conditions.filter(isConditionStated), (condition) => {
        expect(conditionsAgree(condition, condition)).toEqual({ kind: "agree" });
      }),
    );
  });

  test("keeps new and aged apart", () => {
    expect(conditionsAgree(yearFive, read("new"))).toEqual({
      kind: "differ",
      reason: "A figure for “new” says nothing certain about “year 5”.",
    });
  });

  test("keeps wet and dry apart, and lets one that is not stated stand", () => {
    expect(conditionsAgree(read("new, dry"), read("new, wet"))).toEqual({
      kind: "differ",
      reason: "The figure was got on a wet surface and is wanted on a dry one; water changes hardness, grip and ball.",
    });
    expect(conditionsAgree(read("new"), read("new, wet"))).toEqual({ kind: "agree" });
    expect(conditionsAgree(read("wet"), read("year 5, wet"))).toEqual({ kind: "agree" });
  });

  test("keeps temperatures apart that lie further from each other than the tolerance", () => {
    const reason =
      "The figure was got at 40 °F and is wanted at 23 °C; temperatures more than 18 °F (10 K) apart are not held against each other, because infill and foam stiffen in the cold.";
    expect(conditionsAgree(read("new, 23 °C"), read("new, 40 °F"))).toEqual({ kind: "differ", reason });
    expect(conditionsAgree(read("new, 23 °C"), read("new, 33 °C"))).toEqual({ kind: "agree" });
    expect(conditionsAgree(read("new, 23 °C"), read("new, 33.1 °C")).kind).toBe("differ");
    expect(conditionsAgree(read("new, 30 °C"), read("new, 10-20 °C"))).toEqual({ kind: "agree" });
  });

  test("parts wetness and temperature alike in both directions", () => {
    fc.assert(
      fc.property(conditions, conditions, (one, other) => {
        const sameAge = { ...other, age: one.age };
        fc.pre(isConditionStated(one) && isConditionStated(sameAge) && one.age.kind !== "not-stated");
        expect(conditionsAgree(one, sameAge).kind).toBe(conditionsAgree(sameAge, one).kind);
      }),
    );
  });

  test("does not let a condition that is not stated answer for any", () => {
    for (const wanted of [yearFive, read("new"), read("new, wet"), read("not stated")]) {
      expect(conditionsAgree(wanted, read(""))).toEqual({
        kind: "differ",
        reason: "The condition of the surface is not stated, and hardness and play change with age.",
      });
    }
  });

  test("parts figures by the infill in place, and takes silence for the full depth", () => {
    const agree = (one: string, other: string) => conditionsAgree(read(one), read(other)).kind;
    expect(conditionsAgree(read("new"), read("new, 0.5 in less infill"))).toEqual({
      kind: "differ",
      reason:
        "The figure was got with 0.5 in (12.7 mm) less infill and is wanted at the full infill depth of the bid; hardness and play change with the depth.",
    });
    expect(agree("new, 0.5 in less infill", "new")).toBe("differ");
    expect(agree("new, 0.5 in less infill", "new, 12.7 mm less infill")).toBe("agree");
    expect(agree("new, infill 1 in deep", "new, infill 1.5 in deep")).toBe("differ");
    expect(agree("new, infill 1 in deep", "new, 1 in less infill")).toBe("differ");
    expect(agree("new", "new, 0 in less infill")).toBe("agree");
  });
});
