import { describe, expect, test } from "vitest";
import { plainDate } from "#lib/quantity";
import {
  type RegisterItem,
  registerLine,
  registerSentence,
  reviewActions,
  type SubmittalVersion,
  startingRegister,
  suggestedAction,
} from "#lib/submittal";
import { requirementsFrom, wholeClause } from "../requirement/clauses";

const day = plainDate;
const came = (version: Partial<SubmittalVersion> = {}): SubmittalVersion => ({
  received: day("2027-03-01"),
  reviewer: "Architect",
  action: null,
  answered: null,
  values: [],
  reports: [],
  remarks: {},
  ...version,
});
const item = (change: Partial<RegisterItem>): RegisterItem => ({
  id: "a",
  item: "Sample",
  from: "",
  kind: "sample",
  clauses: ["tuft-bind"],
  due: null,
  versions: [],
  ...change,
});
const says = (change: Partial<RegisterItem>, asOf: string) => registerLine(item(change), day(asOf)).sentence;

describe("the register", () => {
  test("is made from what the clauses and the owner ask for; a clause that is off asks for nothing", () => {
    const clauses = [
      {
        ...wholeClause("tuft-bind", "tuft-bind.d1335", { kind: "at-least", limit: "8 lbf" }),
        submittals: ["test-report", "sample"] as const,
      },
      { ...wholeClause("off", "pile-height.d5823", { kind: "at-least", limit: "2 in" }), isOn: false },
    ];
    const register = startingRegister(
      requirementsFrom(
        [],
        clauses.map((clause) => ({ ...clause, submittals: [...(clause.submittals ?? [])] })),
      ),
      [{ id: "sieve", item: "Sieve analysis", kind: "test-report", usedBy: ["tuft-bind"] }],
    );
    expect(register.map(({ id, item: name }) => `${id}: ${name}`)).toEqual([
      "tuft-bind-test-report: Test reports: Tuft bind",
      "tuft-bind-sample: Samples: Tuft bind",
      "sieve: Sieve analysis",
    ]);
  });

  test("says where a line stands on a day", () => {
    expect(says({}, "2027-03-01")).toBe("Awaited, with no date set.");
    expect(says({ due: day("2027-03-01") }, "2027-02-27")).toBe("Due in 2 days.");
    expect(says({ due: day("2027-03-01") }, "2027-03-01")).toBe("Due today.");
    expect(says({ due: day("2027-03-01") }, "2027-03-02")).toBe("Overdue by 1 day.");
    expect(says({ due: day("2028-02-28") }, "2028-03-01")).toBe("Overdue by 2 days."); // leap year
    expect(says({ versions: [came()] }, "2027-03-15")).toBe("In review for 14 days.");
    expect(says({ versions: [came()] }, "2027-03-16")).toBe(
      "In review for 15 days, 1 day over the time for an answer.",
    );
    expect(
      says({ versions: [came({ action: "revise-and-resubmit", answered: day("2027-03-10") })] }, "2027-03-20"),
    ).toBe("To be handed in again; answered 10 days ago.");
    expect(
      says({ versions: [came({ action: "rejected" }), came({ received: day("2027-03-18") })] }, "2027-03-20"),
    ).toBe("In review for 2 days.");
    expect(
      says({ versions: [came({ action: "no-exceptions-taken", answered: day("2027-03-10") })] }, "2027-03-20"),
    ).toBe("Closed.");
  });

  test("sums up what is closed and what is late", () => {
    const lines = [
      item({ item: "Seam drawing", due: day("2027-03-01") }),
      item({ versions: [came({ action: "for-information-only" })] }),
    ].map((each) => registerLine(each, day("2027-03-05")));
    expect(registerSentence(lines)).toBe("1 of 2 closed; late: “Seam drawing”.");
    expect(registerSentence(lines.slice(1))).toBe("1 of 1 closed; nothing is late.");
    expect(registerSentence([])).toBe("The register is empty.");
  });

  test("knows the usual answers", () =>
    expect(Object.values(reviewActions).map(({ label }) => label)).toEqual([
      "No Exceptions Taken",
      "Make Corrections Noted",
      "Revise and Resubmit",
      "Rejected",
      "Submit Specified Item",
      "For Information Only",
    ]));

  test("suggests an answer from the reviews", () => {
    const review = (specification: "meets" | "falls-short" | "not-decided", bid: "as-bid" | "weaker" | "stronger") =>
      ({
        requirement: "a",
        specification: { kind: specification },
        bid: { kind: bid },
        cautions: [],
        comment: "",
      }) as const;
    expect(suggestedAction([review("meets", "as-bid")])).toBe("no-exceptions-taken");
    expect(suggestedAction([review("meets", "as-bid"), review("meets", "stronger")])).toBe("make-corrections-noted");
    expect(suggestedAction([review("meets", "weaker"), review("meets", "stronger")])).toBe("revise-and-resubmit");
    expect(suggestedAction([review("not-decided", "as-bid")])).toBe("revise-and-resubmit");
    expect(suggestedAction([review("falls-short", "weaker"), review("meets", "as-bid")])).toBe("rejected");
  });
});
