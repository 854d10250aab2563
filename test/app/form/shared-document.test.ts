import { describe, expect, test } from "vitest";
import { isOwnUntouched, othersParts, ownParts } from "../../../app/_components/form/shared-document";

type Values = { mine: readonly string[]; theirs: string };

const shared = {
  parts: ["mine"] as const,
  filled: (body: unknown): Values => ({ mine: [], theirs: "", ...(body as Partial<Values>) }),
};

describe("a document of which a page edits a part", () => {
  const known: Values = { mine: ["a"], theirs: "before" };

  test("is untouched for the page where only other parts have changed", () =>
    expect(isOwnUntouched({ known, theirs: { mine: ["a"], theirs: "after" } }, shared)).toBe(true));

  test("is touched where its own part has changed", () =>
    expect(isOwnUntouched({ known, theirs: { mine: ["b"], theirs: "before" } }, shared)).toBe(false));

  test("is untouched where its own part is empty and was never stored", () =>
    expect(isOwnUntouched({ known: { mine: [], theirs: "" }, theirs: { theirs: "after" } }, shared)).toBe(true));

  test("parts into what the page edits and what it does not", () => {
    expect(ownParts(known, shared)).toEqual({ mine: ["a"] });
    expect(othersParts({ theirs: "after" }, shared)).toEqual([["theirs", "after"]]);
  });
});
