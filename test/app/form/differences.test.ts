import { describe, expect, test } from "vitest";
import { differences } from "../../../app/_components/form/differences";

describe("differences where one version lacks an entry", () => {
  test("lists each text of an entry that only one version has", () =>
    expect(
      differences({ ownMaterials: [] }, { ownMaterials: [{ label: "River sand", source: "data sheet" }] }),
    ).toEqual([
      { path: "own materials · 1 · label", mine: "–", theirs: "River sand" },
      { path: "own materials · 1 · source", mine: "–", theirs: "data sheet" },
    ]));

  test("tells an empty list from none", () =>
    expect(differences({ diagonals: [] }, {})).toEqual([{ path: "diagonals", mine: "[]", theirs: "–" }]));
});
