import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printedAsText, printedSection, readingGrade, type SectionNotes, widestGrade } from "#lib/document";
import {
  announcedCriteria,
  blankPlaces,
  blanksOf,
  type ChoiceId,
  comparedSections,
  comparisonText,
  completenessNotes,
  type NumberedSection,
  readLanguage,
  sectionBlanks,
  sectionChoices,
  submittalKinds,
} from "#lib/requirement";
import { demonstrationInput, drafted } from "./drafted";

const articlesOf = ({ parts, appendices }: NumberedSection) => [
  ...parts.flatMap(({ articles }) => articles),
  ...appendices,
];
const textsOf = (section: NumberedSection) =>
  articlesOf(section).flatMap(({ paragraphs }) => paragraphs.map(({ text }) => text));
const frame = {
  owner: "A district",
  project: "A field",
  notice: "",
  stand: "Draft",
  date: "2026-11-25",
  procedure: [],
};
const textOf = (section: NumberedSection, notes: SectionNotes = "without notes") =>
  printedAsText(printedSection(section, frame, notes));
const article = (section: NumberedSection, id: string) => articlesOf(section).find((each) => each.id === id);
const choiceIds = Object.keys(sectionChoices) as ChoiceId[];
const anyChoices = fc.record(Object.fromEntries(choiceIds.map((id) => [id, fc.boolean()]))) as fc.Arbitrary<
  Record<ChoiceId, boolean>
>;

const nothingKnown = {
  project: "",
  owner: "",
  field: "",
  hoursOfUse: "",
  climate: "",
  studyPeriod: "",
  discountRate: "",
  baseDate: "",
  costTiming: "",
  testPoints: "",
  outlook: "",
};

describe("the drafted section", () => {
  const section = drafted();

  test("has the three parts and their articles in the order of the section format", () =>
    expect(
      section.parts.map(
        ({ number, title, articles }) =>
          `${number} ${title}: ${articles.map((each) => `${each.number} ${each.title.toLowerCase()}`).join(", ")}`,
      ),
    ).toEqual([
      "PART 1 GENERAL: 1.1 summary, 1.2 references, 1.3 definitions, 1.4 administrative requirements, 1.5 action submittals, 1.6 informational submittals, 1.7 closeout submittals, 1.8 maintenance material submittals, 1.9 quality assurance, 1.10 delivery, storage and handling, 1.11 field conditions, 1.12 warranty",
      "PART 2 PRODUCTS: 2.1 products and equals, 2.2 performance requirements, 2.3 materials, 2.4 accessories, 2.5 source quality control",
      "PART 3 EXECUTION: 3.1 examination, 3.2 preparation, 3.3 installation, 3.4 tolerances, 3.5 field quality control, 3.6 adjusting and cleaning, 3.7 closeout activities, 3.8 protection, 3.9 maintenance",
    ]));

  test("says of a requirement all that belongs to it", () =>
    expect(
      article(section, "materials")
        ?.paragraphs.slice(6, 12)
        .map(({ number, text }) => `${number} ${text}`),
    ).toEqual([
      "C. Tuft bind: at least 8 lbf (35.6 N), as the average of all readings, in this condition: new.",
      "1. Method: ASTM D1335, current edition.",
      "2. Least evidence with the bid: accredited laboratory.",
      "3. At completion: none beyond the report, since the test destroys the sample.",
      "4. If missed: carpet of that production run is replaced.",
      "5. Reason: Tufts that come out leave bare strips and set fibre loose.",
    ]));

  test("announces every criterion with its weight, and the life-cycle method with its rate", () => {
    const texts = article(section, "evaluation")?.paragraphs.map(({ text }) => text) ?? [];
    for (const { criterion } of demonstrationInput().requirements)
      if (criterion) expect(texts).toContain(`${criterion.label}.`);
    expect(texts).toContain("Weight: 20 percent of all points.");
    expect(texts).toContain("Discount rate: 3 % a year over general inflation.");
    expect(texts).toContain(
      "Points along straight lines between these: 6 years, 0 of 100 points; 8 years, 50 of 100 points; 10 years, 80 of 100 points; 12 years, 100 of 100 points.",
    );
  });

  test("shows its blanks and takes what is filled in", () => {
    expect(blanksOf(section)).toContain("days to mend a reported defect");
    const filled = drafted({
      filledIn: Object.fromEntries(Object.keys(sectionBlanks).map((id) => [id, "10 days"])),
    });
    expect(blanksOf(filled).filter((asked) => blankPlaces([]).get(asked)?.kind === "section")).toEqual([]);
    expect(textsOf(filled).join(" ")).toContain("mends it within 10 days.");
  });

  test("knows for every blank where it is filled in", () => {
    const { requirements } = demonstrationInput();
    const bare = requirements.map((each) => ({
      ...each,
      acceptance: "",
      remedy: "",
      edition: { text: "", year: null },
    }));
    const nowhere = drafted({ requirements: bare, facts: nothingKnown });
    const places = blankPlaces(bare);
    expect(blanksOf(nowhere).length).toBeGreaterThan(20);
    expect(blanksOf(nowhere).filter((asked) => !places.has(asked))).toEqual([]);
    expect(places.get("remedy where tuft bind is missed")).toEqual({
      kind: "clause",
      requirement: "tuft-bind",
      field: "remedy",
    });
  });

  test("asks for each kind of submittal where it belongs", () => {
    const all = demonstrationInput();
    const submittals = Object.keys(submittalKinds).map((kind) => ({
      id: kind,
      item: `Item of ${kind}`,
      kind: kind as keyof typeof submittalKinds,
      usedBy: [],
    }));
    const asked = drafted({ submittals, requirements: all.requirements });
    for (const [kind, { article: place }] of Object.entries(submittalKinds))
      expect(article(asked, `${place}-submittals`)?.paragraphs.map(({ text }) => text)).toContain(`Item of ${kind}.`);
  });

  test("a switch changes the text and nothing refers to what is gone", () => {
    for (const id of choiceIds)
      expect(textsOf(drafted({ choices: { [id]: true } }))).not.toEqual(textsOf(drafted({ choices: { [id]: false } })));
  });

  test("a clause that is off is not in the text", () => {
    const { requirements } = demonstrationInput();
    const off = drafted({
      requirements: requirements.map((each) => (each.id === "tuft-bind" ? { ...each, isOn: false } : each)),
    });
    expect(textsOf(off).join(" ")).not.toContain("Tuft bind");
    expect(textsOf(section).join(" ")).toContain("Tuft bind");
  });
});

describe("whatever the owner switches on or off", () => {
  test("gets no neutral-language note, has whole sentences and no open reference", () => {
    fc.assert(
      fc.property(anyChoices, (choices) => {
        const section = drafted({ choices });
        const text = textOf(section, "with notes to the specifier");
        expect(readLanguage(text).notes.map(({ words, family }) => `${family}: ${words}`)).toEqual([]);
        expect(
          textsOf(section).filter((each) => /@|undefined|null|\s{2}|^\s*$/.test(each) || !/[.:]$/.test(each)),
        ).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test("says nothing twice at one place and asks a reader for nine years of school at most", () => {
    const section = drafted();
    for (const { paragraphs } of section.parts.flatMap(({ articles }) => articles)) {
      const heads = paragraphs.filter(({ level }) => level === 0).map(({ text }) => text);
      expect(new Set(heads).size).toBe(heads.length);
    }
    const grade = readingGrade(textsOf(section).map((text) => text.replace(/:$/, ".")));
    console.log(`Reading grade of the drafted section: ${grade?.toFixed(1)}`);
    expect(grade).toBeLessThanOrEqual(widestGrade);
  });

  test("an empty project gives a section of blanks and not nonsense", () => {
    const section = drafted({ facts: nothingKnown, requirements: [], submittals: [] });
    expect(blanksOf(section)).toContain("name of the owner");
    expect(textsOf(section)).toContain("No test method is named in this Section.");
    expect(textsOf(section).filter((text) => /undefined|null|“”|: \.|\s,/.test(text))).toEqual([]);
  });

  test("what it announces is what the completeness notes ask for", () => {
    const input = demonstrationInput();
    const section = { requirements: input.requirements, submittals: input.submittals };
    const rules = (announced: readonly string[]) =>
      new Set(completenessNotes({ ...section, announced }).map(({ rule }) => rule));
    expect(rules(announcedCriteria(input)).has("criterion-not-announced")).toBe(false);
    expect(
      rules(announcedCriteria({ ...input, choices: { "evaluation-appendix": false } })).has("criterion-not-announced"),
    ).toBe(true);
  });
});

describe("plain text", () => {
  test("hangs the lines behind the number and keeps within the page", () => {
    const text = textOf(drafted());
    expect(text.split("\n").filter((line) => line.length > 88)).toEqual([]);
    expect(text).toContain(
      "    4.  Section 01 77 00, closeout procedures, and Section 01 78 00, closeout\n        submittals.\n",
    );
    expect(text).not.toContain("Note to the specifier");
    expect(textOf(drafted(), "with notes to the specifier")).toContain("[Note to the specifier: Name no maker here.");
  });
});

describe("the comparison of two versions", () => {
  const before = drafted();

  test("says nothing where nothing changed", () =>
    expect(comparisonText(comparedSections(before, before))).toBe("Nothing changed."));

  test("tells articles and words, and not numbers that only moved", () => {
    const after = drafted({
      choices: { "pre-installation-meeting": false, "insured-warranty": true },
      filledIn: { "defect-mend": "20 days" },
    });
    const changes = comparedSections(before, after);
    expect(changes.map(({ heading, kind }) => `${heading}: ${kind}`)).toEqual([
      "1.4 ADMINISTRATIVE REQUIREMENTS: changed",
      "1.12 WARRANTY: changed",
    ]);
    expect(changes[0]?.changes.map(({ kind }) => kind)).toEqual(["removed", "removed", "removed", "removed"]);
    const text = comparisonText(changes);
    expect(text).toContain(
      "~ F Response: the warrantor looks at a reported defect within [… to be filled in: days to look at a reported defect] and mends it within ",
    );
    expect(text).toContain("+ G Insurance: a third party insures the warranty for its whole term.");
  });

  test("takes a number with its decimals for one word", () => {
    const [earlier, later] = ["5.5 days", "5.25 days"].map((days) => drafted({ filledIn: { "defect-look": days } }));
    if (earlier === undefined || later === undefined) throw new Error("two drafts are wanted");
    expect(comparisonText(comparedSections(earlier, later))).toContain("within [-5.5-]{+5.25+} days");
  });

  test("tells of articles that are new or gone", () => {
    const without = drafted({ choices: { "evaluation-appendix": false } });
    expect(comparedSections(before, without).map(({ id, kind }) => `${id}: ${kind}`)).toEqual([
      "bid-form: removed",
      "evaluation: removed",
    ]);
    expect(comparedSections(without, before).map(({ id, kind }) => `${id}: ${kind}`)).toEqual([
      "bid-form: added",
      "evaluation: added",
    ]);
  });

  test("the later text can be read out of the changes, whatever is switched", () => {
    fc.assert(
      fc.property(anyChoices, anyChoices, (one, other) => {
        const [earlier, later] = [drafted({ choices: one }), drafted({ choices: other })];
        for (const { kind, id, changes } of comparedSections(earlier, later)) {
          const texts = (article(kind === "removed" ? earlier : later, id)?.paragraphs ?? []).map(({ text }) => text);
          for (const change of changes) {
            if (change.kind === "changed")
              expect(texts).toContain(
                change.words
                  .filter((word) => word.kind !== "removed")
                  .map(({ text }) => text)
                  .join(""),
              );
            else if (change.kind === "added" || kind === "removed") expect(texts).toContain(change.text);
            else expect(texts.filter((text) => text === change.text).length).toBeLessThanOrEqual(1);
          }
        }
      }),
      { numRuns: 30 },
    );
  });
});
