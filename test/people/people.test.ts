import { describe, expect, test } from "vitest";
import { type ActId, actLabels, actorOf, actRefused, type Person, peopleSchema, type RoleId, roles } from "#lib/people";

const acts = Object.keys(actLabels) as ActId[];
const person = (name: string, ...held: RoleId[]): Person => ({
  ...{ id: name.toLowerCase().replaceAll(" ", "-"), name, position: "", roles: held },
});

/** Who may do what, written down anew: the owner's choice, no source. */
const may: Readonly<Record<RoleId, readonly ActId[]>> = {
  administrator: acts.filter((act) => act !== "score"),
  architect: ["set-criteria", "freeze-and-amend", "enter-bids", "keep-papers"],
  representative: ["enter-bids", "level-costs", "keep-papers", "agree"],
  evaluator: ["score", "agree"],
  reader: [],
};

describe("actorOf", () => {
  test.each(Object.keys(may) as RoleId[])("gives the role %s what it lets somebody do, and nothing else", (role) => {
    const actor = actorOf([person("Ada Lane", role)], { id: "ada-lane", name: "Ada Lane", unlisted: "nothing" });
    expect(acts.filter((act) => actRefused(actor, act) === null)).toEqual(
      acts.filter((act) => may[role].includes(act)),
    );
  });

  test("adds several roles together, each act once", () => {
    const both = actorOf([person("Ada Lane", "evaluator", "representative")], {
      id: "ada-lane",
      name: "",
      unlisted: "nothing",
    });
    expect([...both.acts].sort()).toEqual(["agree", "enter-bids", "keep-papers", "level-costs", "score"]);
  });

  test("knows a person by the id and calls them by the name of the list", () => {
    const listed = [person("Ada Lane", "reader")];
    expect(actorOf(listed, { id: "ada-lane", name: "ADA  LANE", unlisted: "nothing" }).name).toBe("Ada Lane");
    expect(actorOf(listed, { id: "ben-moor", name: "Ada Lane", unlisted: "nothing" }).roles).toEqual([]);
  });

  test("lets nobody score who is not on the list, whatever else the place allows", () => {
    const stranger = { id: "local", name: "local" };
    expect(actorOf([], { ...stranger, unlisted: "everything-but-scoring" }).acts).toEqual(
      acts.filter((act) => act !== "score"),
    );
    expect(actorOf([], { ...stranger, unlisted: "nothing" }).acts).toEqual([]);
  });
});

test("a refusal says who may", () => {
  const reader = actorOf([person("Ada Lane", "reader")], { id: "ada-lane", name: "", unlisted: "nothing" });
  expect(actRefused(reader, "level-costs")).toBe(
    "Ada Lane is reader here. To level prices and set the owner’s figures takes the role owner’s administrator or owner’s representative.",
  );
  expect(actRefused(actorOf([], { id: "local", name: "", unlisted: "nothing" }), "score")).toBe(
    "To score bids as an evaluator takes a person on the list of people with the role evaluator.",
  );
  for (const act of acts) expect(Object.values(roles).some((role) => role.acts.includes(act))).toBe(true);
});

test("a list holds every person once, each with a role", () => {
  const typed = (...people: unknown[]) => peopleSchema.safeParse({ people });
  expect(typed(person("Ada Lane", "reader")).success).toBe(true);
  const twice = typed(person("Ada Lane", "reader"), person("Ada Lane", "evaluator"));
  expect(twice.error?.issues[0]).toMatchObject({
    path: ["people", 1, "name"],
    message: expect.stringMatching(/is on the list already/),
  });
  expect(typed(person("Ada Lane")).error?.issues[0]?.message).toBe("Choose at least one role.");
});
