import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { concernFamilies, readLanguage } from "#lib/requirement";
import { lastSentences } from "./neutral-language-last-sentences";
import { laterSentences } from "./neutral-language-later-sentences";
import { isHeldBack, sentences } from "./neutral-language-sentences";
import { sixthSentences } from "./neutral-language-sixth-sentences";
import { fourthSentences, unseenSentences } from "./neutral-language-unseen-sentences";
import { precisionAndRecall } from "./precision-recall";

const all = [...sentences, ...laterSentences, ...lastSentences, ...fourthSentences, ...unseenSentences];
const told = ({ sentences: count, precision, recall }: ReturnType<typeof precisionAndRecall>) =>
  `${count} sentences, precision ${precision.toFixed(3)}, recall ${recall.toFixed(3)}`;

describe("neutral-language notes on sentences written for the purpose", () => {
  test("there are at least 200, about half of them clean", () => {
    expect(all.length).toBeGreaterThanOrEqual(200);
    const clean = all.filter(([, ...families]) => families.length === 0).length;
    expect(clean / all.length).toBeGreaterThan(0.4);
    expect(clean / all.length).toBeLessThan(0.6);
    const tried = new Set<string>(all.flatMap(([, ...families]) => families));
    expect(Object.keys(concernFamilies).filter((family) => !tried.has(family))).toEqual(["owners-names"]); // tried below
    expect(new Set(all.map(([text]) => text)).size).toBe(all.length);
  });

  test("say what the sentences they were written on ask for", () =>
    expect(
      precisionAndRecall([...sentences, ...laterSentences, ...lastSentences].filter(([text]) => !isHeldBack(text)))
        .misses,
    ).toEqual([]));

  // The rules were first written on two thirds of the first sitting and then found all of its last third, which says
  // little: one hand wrote both. On the second sitting, in another voice, recall was 0.50, on the held-back part of the
  // third 0.53, on the fourth 0.90 (precision 0.90). The rules were widened after each. The fifth was left alone, so its
  // figure is the one to trust (words that came in later, from the project’s own strings, did not move it); half of its clean sentences were made to look like trouble.
  test("find at least 95 of 100 concerns in the held-back third, and 95 of 100 notes are right", () => {
    const measured = precisionAndRecall(all.filter(([text]) => isHeldBack(text)));
    console.log(`Held-back third of all five sittings: ${told(measured)}`);
    expect(measured.precision).toBeGreaterThanOrEqual(0.95);
    expect(measured.recall).toBeGreaterThanOrEqual(0.95);
  });

  test("do not fall behind on the sitting that no rule was made for", () => {
    const measured = precisionAndRecall(unseenSentences);
    console.log(`Fifth sitting, no rule changed after it: ${told(measured)}`);
    expect(measured.precision).toBeGreaterThanOrEqual(0.9);
    expect(measured.recall).toBeGreaterThanOrEqual(0.95);
  });

  test("find most of what the sixth sitting, in the voice of sections that are handed around, has in it", () => {
    const measured = precisionAndRecall(sixthSentences);
    console.log(`Sixth sitting: ${told(measured)}`);
    expect(measured.precision).toBeGreaterThanOrEqual(0.9);
    expect(measured.recall).toBeGreaterThanOrEqual(0.9);
  });
});

describe("a note", () => {
  const text =
    "1.1 SUMMARY\n\nA. Carpet: pile height 2.2375 in.\nB. The infill shall be the patented granule; no substitutions.";
  const { notes } = readLanguage(text);

  test("marks the very words of the text", () => {
    expect(notes.map(({ words, start, end }) => [words, text.slice(start, end)])).toEqual([
      ["2.2375 in", "2.2375 in"],
      ["patented", "patented"],
      ["no substitutions", "no substitutions"],
    ]);
    const [first] = notes;
    expect(text.slice(first?.sentence.start, first?.sentence.end)).toBe("Carpet: pile height 2.2375 in.");
  });

  test("computes the window that it offers for a figure", () =>
    expect(notes[0]?.offered).toBe(
      "“Pile height: from 2 to 2.5 in, by ASTM D5823, current edition.” The window is a tenth to either side, rounded outward; set the one that the use of the field needs, or leave the recipe open and fix the result instead.",
    ));

  test("says why, on what it rests and how well that is known", () => {
    expect(notes[1]).toMatchObject({
      family: "ownership",
      severity: "may shut others out",
      concern: "A patent belongs to one owner, so the words shut out every other way to the same result.",
    });
    expect(notes[1]?.basis.map(({ citation, status }) => `${citation}: ${status}`)).toEqual([
      "Directive 2014/24/EU, Article 42(4): read in a secondary text",
      "2 CFR 200.319, examples of what restricts competition: read",
    ]);
  });

  test("tells of names on the owner’s list however they are written", () => {
    const listed = (sentence: string) =>
      readLanguage(sentence, ["Sample-Blade Two"]).notes.filter(({ family }) => family === "owners-names");
    expect(listed("Fibre like sample blade TWO is wanted.").map(({ words }) => words)).toEqual(["sample blade TWO"]);
    expect(listed("Fibre as SAMPLE-BLADE Two or equal.")[0]?.concern).toContain(
      "say which characteristics make an equal",
    );
    expect(listed("Fibre blades of any sample.")).toEqual([]);
  });
});

describe("sentences", () => {
  const count = (text: string) => readLanguage(text).sentences;

  test("go on after decimal numbers, short forms, section numbers and wrapped lines", () => {
    expect(count("Pile of 2.25 in. by 0.5 oz. per tuft, see Fig. 3 and Art. 2.2,\nas drawn by Dr. J. Doe.")).toBe(1);
    expect(count("1.1 SUMMARY\nA. Base. See 2.2.\n1. First item\n2. Second item")).toBe(5);
    expect(count("The pile is 2 in. The infill is 1.5 in. Both are measured.")).toBe(3);
    expect(count("Ask e.g. for a report, i.e. for the full text.")).toBe(1);
  });

  test("an “or equal” that follows at once still counts", () =>
    expect(readLanguage("Basis of design: Sample Turf 240. Or approved equal.").notes).toEqual([]));

  test("every note lies within the text, whatever the text is", () => {
    const pieces = fc.array(
      fc.constantFrom(
        "patented",
        "™",
        "2.2375 in",
        "pile height",
        "No.",
        "\n",
        "A.",
        " ",
        "“",
        "by Firm Alpha",
        "€",
        "𝒳",
        "-",
        "1.1",
        "\u202e",
      ),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(pieces, (parts) => {
        const text = parts.join(" ");
        for (const { start, end, words, sentence } of readLanguage(text, ["firm alpha"]).notes) {
          expect(text.slice(start, end)).toBe(words);
          expect(sentence.start).toBeLessThanOrEqual(start);
          expect(end).toBeLessThanOrEqual(sentence.end);
        }
      }),
    );
  });
});
