import { describe, expect, test } from "vitest";
import { z } from "zod";
import { criteriaSchema } from "#lib/criteria";
import { evidenceLevels, measures } from "#lib/evaluation";
import {
  askedSubmittalsSchema,
  type ClausesText,
  clausesSchema,
  reportStrayClauses,
  requirementsOf,
} from "#lib/requirement";
import { criteriaOf, criterionText, requirementsFrom, subjects, wholeClause } from "./clauses";

const gate = { kind: "at-least", limit: "8 lbf" } as const;
const tuftBind = criterionText("tuft-bind", "tuft-bind.d1335", gate);
const messages = (clauses: ClausesText) => {
  const read = clausesSchema(subjects).safeParse(clauses);
  return read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
};

describe("requirements", () => {
  test("take label, reason, limit and evidence from the criterion and the rest from the clause beside it", () => {
    const [requirement] = requirementsFrom(
      [tuftBind],
      [
        {
          id: "tuft-bind-clause",
          criterion: "tuft-bind",
          edition: "D1335-17",
          tolerance: "± 0.5 lbf",
          laterTests: "1 year",
        },
      ],
    );
    expect(requirement).toMatchObject({
      id: "tuft-bind-clause",
      label: "Tuft bind",
      method: "d1335",
      edition: { text: "D1335-17", year: 2017 },
      evidence: "Accredited laboratory",
      role: "gates",
      limit: { kind: "at-least", limit: { asEntered: "8 lbf" } },
      yearsBetweenTests: 1,
    });
    expect(requirement?.tolerance?.value).toBeCloseTo(0.5 * 4.4482216152605, 9); // 1 lbf, NIST SP 811
  });

  test("hold every criterion, with blanks where no clause stands beside it, and then the own clauses", () => {
    const own = wholeClause("seams", "warranty-years", { kind: "none" });
    const all = requirementsFrom([tuftBind, criterionText("mass", "infill-mass-per-area", { kind: "none" })], [own]);
    expect(all.map(({ id, role }) => `${id}: ${role}`)).toEqual(["tuft-bind: gates", "mass: scores", "seams: none"]);
    expect(all[0]).toMatchObject({ isOn: true, acceptance: "", remedy: "", tolerance: null });
  });

  test("take the method of a measure that has none of its own from whoever knows it", () => {
    const criteria = criteriaOf([criterionText("hard", "impact-level-as-new", { kind: "below", limit: "165 g" })]);
    expect(requirementsOf(criteria, [])[0]?.method).toBe(null);
    expect(requirementsOf(criteria, [], { "impact-level-as-new": "f1936" })[0]?.method).toBe("f1936");
  });

  test("know no clause beside a criterion that is not there", () =>
    expect(() => requirementsFrom([], [{ id: "a", criterion: "gone" }])).toThrow("no criterion gone"));
});

describe("clauses as text", () => {
  test("nothing is typed twice", () =>
    expect(messages([{ id: "a", criterion: "tuft-bind", label: "Tuft bind", limit: gate }])).toEqual([
      "0.label: The criterion says this already, and a second text could differ from it. Leave the field empty.",
      "0.limit: The criterion holds the limit. Change it there.",
    ]));

  test("say what is missing or does not read", () => {
    expect(messages([{ id: "a" }])).toEqual([
      "0.label: Name the clause in a few plain words.",
      "0.reason: Say in a sentence why this is asked, so that a bidder and the public can follow it.",
      "0.asked: Say what is asked, or name a measure with a limit.",
    ]);
    const odd = {
      ...wholeClause("a", "tuft-bind.d1335", { kind: "within", low: "9 lbf", high: "8 lbf" }),
      method: "D99",
      tolerance: "2 in",
      laterTests: "soon",
    };
    expect(messages([odd]).map((message) => message.split(":")[0])).toEqual([
      "0.limit.high",
      "0.tolerance",
      "0.method",
      "0.laterTests",
    ]);
    expect(
      messages([
        { ...wholeClause("a", "", { kind: "none" }), asked: "Name the crew.", label: "Crew", tolerance: "1 in" },
      ]),
    ).toEqual([
      "0.tolerance: A tolerance belongs to a figure, and this clause asks in words. Name the measure or empty the field.",
    ]);
    expect(messages([wholeClause("a", "tuft-bind.d1335", gate), wholeClause("a", "tuft-bind.d1335", gate)])).toEqual([
      "1.id: Another clause has the id “a” as well.",
    ]);
  });

  const whole = z
    .strictObject({
      criteria: criteriaSchema(measures, evidenceLevels),
      clauses: clausesSchema(subjects).default([]),
      submittals: askedSubmittalsSchema.default([]),
    })
    .superRefine(reportStrayClauses);

  test("a document from before there were clauses still reads", () =>
    expect(whole.parse({ criteria: [tuftBind] })).toMatchObject({ clauses: [], submittals: [] }));

  test("clauses beside criteria fit them", () => {
    const read = whole.safeParse({
      criteria: [tuftBind],
      clauses: [
        { id: "a", criterion: "gone" },
        { id: "b", criterion: "tuft-bind", tolerance: "1 in" },
        { id: "c", criterion: "tuft-bind" },
      ],
    });
    expect(read.error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`)).toEqual([
      "clauses.0.criterion: There is no criterion “gone”. Take the clause out, or name the criterion it belongs to.",
      expect.stringContaining("clauses.1.tolerance: "),
      "clauses.2.criterion: Another clause stands beside the criterion “tuft-bind” already.",
    ]);
  });
});
