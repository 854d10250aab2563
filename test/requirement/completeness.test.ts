import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ClausesText, completenessNotes, completenessRules } from "#lib/requirement";
import { criterionText, requirementsFrom, wholeClause } from "./clauses";

const below = (limit: string) => ({ kind: "below", limit }) as const;
const atLeast = (limit: string) => ({ kind: "at-least", limit }) as const;
const hard = wholeClause("hard", "g-max.f355-a", below("165 g"));

const notesOn = (clauses: ClausesText, announced: readonly string[] = []) =>
  completenessNotes({ requirements: requirementsFrom([], clauses), submittals: [], announced }).map(
    ({ rule, sentence }) => `${rule}: ${sentence}`,
  );

describe("completeness notes", () => {
  test("say nothing of a clause that is whole", () => expect(notesOn([hard])).toEqual([]));

  test("a limit names its test method, where its figure comes from a test", () => {
    const bare = wholeClause("bare", "impact-level-as-new", below("165 g"));
    expect(notesOn([bare])).toEqual(["limit-without-method: The limit for impact level as new names no test method."]);
    expect(notesOn([{ ...bare, method: "ASTM F1936" }])).toEqual([]);
    expect(notesOn([wholeClause("years", "warranty-years", atLeast("8 years"))])).toEqual([]);
  });

  test("a method has an edition", () => {
    expect(notesOn([{ ...hard, edition: "" }])).toEqual([
      "method-without-edition: ASTM F355, missile A for G-max has no edition.",
    ]);
    expect(notesOn([{ ...hard, edition: "F355-16" }])).toEqual([]);
  });

  test("a test on the field says for which readings the limit holds", () => {
    const vague = { ...hard, holdsAt: "not-stated" as const };
    expect(notesOn([vague])).toEqual([
      "no-tolerance: The test of G-max on the field takes many readings, and the text does not say which of them the limit holds for.",
    ]);
    expect(notesOn([{ ...vague, tolerance: "± 5 g" }])).toEqual([]);
  });

  test("a limit is checked at completion and has a remedy", () => {
    expect(notesOn([{ ...hard, acceptance: "" }])).toEqual([
      "no-acceptance-test: Nothing says how G-max is checked at completion.",
    ]);
    expect(notesOn([{ ...hard, remedy: "" }])).toEqual(["no-remedy: Nothing says what happens when G-max is missed."]);
  });

  test("a clause that is switched off is not looked at", () =>
    expect(notesOn([{ ...hard, isOn: false, remedy: "", acceptance: "" }])).toEqual([]));

  describe("two clauses that fight", () => {
    const pile = (id: string, limit: ClausesText[number]["limit"], condition = "new") => ({
      ...wholeClause(id, "pile-height.d5823", limit),
      condition,
    });
    const fights = (...clauses: ClausesText) =>
      notesOn(clauses).filter((note) => note.startsWith("clauses-that-fight")).length;

    test("are told across units, and the same figure in two units is no fight", () => {
      expect(notesOn([pile("a", atLeast("2 in")), pile("b", { kind: "at-most", limit: "50 mm" })])).toContain(
        "clauses-that-fight: “Pile height” and “Pile height” limit the same property, and no figure meets both.",
      );
      expect(fights(pile("a", atLeast("2 in")), pile("b", { kind: "at-most", limit: "50.8 mm" }))).toBe(0);
      expect(fights(pile("a", atLeast("2 in")), pile("b", below("50.8 mm")))).toBe(1);
    });

    test("may differ by condition and by unlike methods", () => {
      expect(fights(pile("a", atLeast("2 in")), pile("b", { kind: "at-most", limit: "45 mm" }, "year 5"))).toBe(0);
      expect(
        fights(
          wholeClause("a", "g-max.f355-a", below("100 g")),
          wholeClause("b", "g-max.f1702-clegg", atLeast("110 g")),
        ),
      ).toBe(0);
      expect(
        fights(wholeClause("a", "g-max.f355-a", below("100 g")), wholeClause("b", "g-max.f355-a", atLeast("110 g"))),
      ).toBe(1);
    });

    test("equal brute force over whole millimetres", () => {
      const limit = fc.oneof(
        fc.record({ kind: fc.constant("at-least" as const), limit: fc.integer({ min: 20, max: 30 }) }),
        fc.record({ kind: fc.constant("below" as const), limit: fc.integer({ min: 20, max: 30 }) }),
        fc.record({ kind: fc.constant("at-most" as const), limit: fc.integer({ min: 20, max: 30 }) }),
      );
      type Limit = typeof limit extends fc.Arbitrary<infer T> ? T : never;
      const allows = ({ kind, limit: end }: Limit, value: number) =>
        kind === "at-least" ? value >= end : kind === "below" ? value < end : value <= end;
      fc.assert(
        fc.property(limit, limit, (one, other) => {
          const halves = Array.from({ length: 60 }, (_, step) => 10 + step / 2);
          const none = !halves.some((value) => allows(one, value) && allows(other, value));
          const [a, b] = [one, other].map(({ kind, limit: end }, index) =>
            pile(String(index), { kind, limit: `${end} mm` }),
          );
          if (a && b) expect(fights(a, b)).toBe(none ? 1 : 0);
        }),
        { numRuns: 60 },
      );
    });
  });

  test("recipe and result are not both fixed", () => {
    const depth = wholeClause("depth", "infill-depth.infill-depth-gauge", {
      kind: "within",
      low: "1.25 in",
      high: "1.75 in",
    });
    expect(notesOn([hard, depth])).toEqual([
      "recipe-and-result: “G-max” fixes how hard the surface is, and “Infill depth” fixes how it is to be reached.",
    ]);
    expect(notesOn([depth])).toEqual([]);
  });

  test("every criterion is announced, the ones whose clause is off as well", () => {
    const requirements = requirementsFrom(
      [criterionText("mass", "infill-mass-per-area", { kind: "none" })],
      [{ id: "m", criterion: "mass", isOn: false }],
    );
    const notes = (announced: readonly string[]) =>
      completenessNotes({ requirements, submittals: [], announced }).map(({ sentence }) => sentence);
    expect(notes([])).toEqual(["Bids are judged by “Infill mass per area”, and the text does not say so."]);
    expect(notes(["mass"])).toEqual([]);
  });

  test("what is asked for is used by a clause that the text holds", () => {
    const submittals = [
      { id: "s", item: "Sieve analysis of the sand", kind: "test-report", usedBy: ["hard"] },
    ] as const;
    const sentences = (clauses: ClausesText) =>
      completenessNotes({ requirements: requirementsFrom([], clauses), submittals, announced: [] }).map(
        ({ sentence }) => sentence,
      );
    expect(sentences([hard])).toEqual([]);
    expect(sentences([{ ...hard, isOn: false }])).toEqual([
      "“Sieve analysis of the sand” is asked for, and no clause uses it.",
    ]);
  });

  test("every kind has a title and says what to do", () =>
    expect(completenessRules.filter(({ title, advice }) => title === "" || !advice.endsWith("."))).toEqual([]));
});
