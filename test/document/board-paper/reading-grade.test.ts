import { describe, expect, test } from "vitest";
import { readingGrade } from "#lib/document";

describe("readingGrade", () => {
  // Flesch–Kincaid (Kincaid, Fishburne, Rogers and Chissom 1975): 0.39 × words/sentences + 11.8 × syllables/words − 15.59
  test("is that of the formula for words and syllables counted by hand", () => {
    // six words of one syllable in one sentence
    expect(readingGrade(["The cat sat on the mat."])).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 9);
    // nine words in two sentences: wa-ter runs off the field | it runs fast; ten syllables
    expect(readingGrade(["Water runs off the field. It runs fast here."])).toBeCloseTo(
      0.39 * (9 / 2) + 11.8 * (10 / 9) - 15.59,
      9,
    );
  });

  test("does not take a decimal point for the end of a sentence", () =>
    expect(readingGrade(["It rose by 2.5 g a year."])).toBe(readingGrade(["It rose by 2,5 g a year."])));

  test("rises with longer sentences and with longer words", () => {
    const plain = readingGrade(["The field is soft. The field is new."]) ?? 0;
    expect(readingGrade(["The field is soft and the field is new."])).toBeGreaterThan(plain);
    expect(readingGrade(["The installation is resilient. The installation is contemporary."])).toBeGreaterThan(plain);
  });

  test("has no grade for a text without words", () => {
    expect(readingGrade([])).toBeNull();
    expect(readingGrade(["—"])).toBeNull();
  });
});
