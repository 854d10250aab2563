import { describe, expect, test } from "vitest";
import { atLeastAsStrong, evidenceLevels, matchEvidence } from "#lib/claim";

describe("the levels of evidence", () => {
  test("run from what is only said to what is promised with a remedy", () => {
    expect(evidenceLevels.map(({ id }) => id)).toEqual([
      "stated",
      "own-test",
      "accredited-laboratory",
      "field-tested",
      "guaranteed",
    ]);
  });

  test.each(evidenceLevels)("$id is defined in a sentence and found by its label", ({ id, label, definition }) => {
    expect(definition).toMatch(/^\p{Lu}.*\.$/u);
    expect(matchEvidence(label.toUpperCase())).toBe(id);
  });

  test("knows no other words", () => expect(matchEvidence("certified")).toBeNull());

  test("count as strong as themselves and stronger than those before them", () => {
    expect(atLeastAsStrong("own-test", "own-test")).toBe(true);
    expect(atLeastAsStrong("field-tested", "accredited-laboratory")).toBe(true);
    expect(atLeastAsStrong("stated", "own-test")).toBe(false);
  });
});
