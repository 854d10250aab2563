import { describe, expect, test } from "vitest";
import { writtenPart } from "#lib/recommendation";

describe("writtenPart", () => {
  test("shows the generated text where nobody wrote", () =>
    expect(writtenPart({ kind: "generated" }, "Bid A leads.")).toEqual({
      showsGenerated: true,
      words: [],
      readThen: null,
    }));

  test("shows words beside the generated text or in its place, paragraph by paragraph", () => {
    const words = "We agree.\n\nThe town votes in May.\n";
    const beside = "Bid A leads.";
    expect(writtenPart({ kind: "added", words, beside }, beside)).toEqual({
      showsGenerated: true,
      words: ["We agree.", "The town votes in May."],
      readThen: null,
    });
    expect(writtenPart({ kind: "instead", words, beside }, beside).showsGenerated).toBe(false);
  });

  test("tells what the generated text read when the words were written, once it reads otherwise", () => {
    const part = { kind: "added", words: "We agree.", beside: "Bid A leads." } as const;
    expect(writtenPart(part, "Bid B leads.").readThen).toBe("Bid A leads.");
  });

  test("says nothing of moved figures where the words came from a file without what they were written beside", () =>
    expect(writtenPart({ kind: "added", words: "We agree.", beside: "" }, "Bid B leads.").readThen).toBeNull());
});
