import { describe, expect, test } from "vitest";
import { othersParts, ownParts } from "../../../app/_components/form/shared-document";

type Values = { mine: readonly string[]; theirs: string };

const shared = {
  parts: ["mine"] as const,
  filled: (body: unknown): Values => ({ mine: [], theirs: "", ...(body as Partial<Values>) }),
};

describe("a document of which a page edits a part", () => {
  const known: Values = { mine: ["a"], theirs: "before" };

  test("parts into what the page edits and what it does not", () => {
    expect(ownParts(known, shared)).toEqual({ mine: ["a"] });
    expect(othersParts({ theirs: "after" }, shared)).toEqual([["theirs", "after"]]);
  });
});
