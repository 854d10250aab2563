import { describe, expect, test } from "vitest";
import { nothingWritten, ownersWordsSchema } from "#lib/recommendation";

const messagesOf = (text: unknown) => {
  const read = ownersWordsSchema.safeParse(text);
  return read.success ? [] : read.error.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);
};

describe("ownersWordsSchema", () => {
  test("takes a paper into which nobody has written", () =>
    expect(ownersWordsSchema.parse({})).toEqual(nothingWritten));

  test("asks for the words where the owner chose to write, and for the name of a view", () => {
    expect(messagesOf({ parts: { gates: { kind: "instead", words: " " } } })).toEqual([
      "parts.gates.words: Write the words that should stand here, or choose the generated text alone.",
    ]);
    expect(messagesOf({ dissents: [{ name: "", words: "I would wait." }] })).toEqual([
      "dissents.0.name: Name who holds this view.",
    ]);
  });

  test("knows no part that the paper does not have, so that no caution can be written away", () =>
    expect(messagesOf({ parts: { cautions: { kind: "instead", words: "All is safe." } } })).toHaveLength(1));
});
