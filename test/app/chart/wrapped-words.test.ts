import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wrappedWords } from "../../../app/_components/chart/wrapped-words";

describe("wrappedWords", () => {
  test("breaks between words", () => {
    expect(wrappedWords("Tyre rubber, ground frozen", 14)).toEqual(["Tyre rubber,", "ground frozen"]);
  });

  test("gives a word that is too long a line of its own", () => {
    expect(wrappedWords("a considerable b", 4)).toEqual(["a", "considerable", "b"]);
  });

  test("loses no word", () => {
    const text = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }).map((words) => words.join(" "));
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 30 }), (words, longest) => {
        expect(wrappedWords(words, longest).join(" ")).toBe(words);
      }),
    );
  });
});
