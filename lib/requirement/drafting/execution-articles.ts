import { isChosen } from "./choices";
import { figureInWords } from "./limit-in-words";
import type { Article, DraftingInput } from "./model";
import { blank, chosen, fact, noted, paragraph, paragraphs } from "./paragraph";
import { limitsImpact } from "./requirement-paragraphs";

const figuresNote =
  "The figures of this Article are common practice without a source. Check them against base and use.";

/** What the base has to drain: the limit for the whole system where there is one. */
function leastDrainage(input: DraftingInput): string {
  const limit = input.requirements.find(
    ({ isOn, subject }) => isOn && subject?.property === "system-infiltration",
  )?.limit;
  return limit?.kind === "at-least" ? figureInWords(limit.limit) : blank(input, "base-drainage");
}

export const examination = (input: DraftingInput): Article => ({
  id: "examination",
  title: "EXAMINATION",
  paragraphs: paragraphs(
    "Check the base with the trade that built it, and write down what is found. Placing carpet means that the base is accepted.",
    noted(
      figuresNote,
      paragraph(
        "Base, before anything is placed on it:",
        "Planarity: no gap above 1/4 in under a 10 ft straightedge, on a grid of 25 ft.",
        "Grade: within 1/2 in of the drawings, and no spot that holds water.",
        "Compaction: by the Section on base courses.",
        chosen(
          input,
          "flood-test",
          `Drainage: flood tests at ${blank(input, "flood-test-places")} places, each draining at least at ${leastDrainage(input)}.`,
        ),
      ),
    ),
    "Correct what does not meet these limits before work goes on.",
  ),
});

export const preparation = (): Article => ({
  id: "preparation",
  title: "PREPARATION",
  paragraphs: paragraphs(
    "Take off loose stone, litter and standing water.",
    "Fix the edge anchor and close gaps at curbs, drains and sleeves.",
    "Unroll carpet and let it lie until it is flat and at the temperature of the site.",
  ),
});

export const installation = (): Article => ({
  id: "installation",
  title: "INSTALLATION",
  paragraphs: paragraphs(
    "Shock layer, where offered: joints closed, no steps between panels, and drainage paths left open.",
    paragraph(
      "Carpet:",
      "Lay rolls in the order and direction of the approved drawing, with no folds.",
      "Join seams by sewing or on tape with adhesive, as the shop drawings show.",
      "Cut in lines along a straight edge or a template, and shear them to the height of the pile.",
      "Let adhesive cure before infill or loads come on the seam.",
    ),
    paragraph(
      "Infill:",
      "Place it in thin, even passes and brush after each pass, so that the fibers stand up.",
      "Where components are layered, finish one before the next begins.",
      "Weigh what is placed by area, and write it down each day.",
    ),
  ),
});

export const tolerances = (): Article => ({
  id: "tolerances",
  title: "TOLERANCES",
  paragraphs: paragraphs(
    noted(figuresNote, "Seams: closed, flat and straight within 1/4 in over 10 ft. No fiber is caught in the seam."),
    "Lines: within 1/2 in of their place over the length of the field, and within 1/8 in of their width.",
    "Surface: no gap above 3/8 in under a 10 ft straightedge after infill is placed.",
    "Edges: level with the curb within 1/4 in, with no place to trip.",
  ),
});

/** 3.5: tests on the finished field, by whom, when and what follows. */
export function fieldQualityControl(input: DraftingInput): Article {
  const { facts, choices } = input;
  const tester = isChosen(choices, "owner-engages-laboratory")
    ? "The laboratory engaged by the Owner"
    : "An accredited laboratory engaged by the Contractor";
  return {
    id: "field-quality-control",
    title: "FIELD QUALITY CONTROL",
    paragraphs: paragraphs(
      `${tester} tests the finished field before the public uses it, by the methods of @performance.`,
      limitsImpact(input)
        ? noted(
            "The least number of points belongs to the edition of the method or to the contract. Set one of them.",
            paragraph(
              `Impact: at ${fact(facts, "testPoints")} points at least.`,
              "The places are drawn on a plan before the test, and two of them are chosen on the day.",
              "Temperature of air and surface, moisture and infill depth are recorded at each point.",
            ),
          )
        : null,
      chosen(
        input,
        "depth-grid",
        paragraph(
          `Infill depth: at ${blank(input, "depth-places")} places on a grid, three readings at each.`,
          "The average lies within 1/8 in of the depth of the bid, and no place is more than 1/4 in off.",
        ),
      ),
      chosen(
        input,
        "mass-by-tickets",
        paragraph(
          "Infill mass: worked out from weigh tickets, less moisture and what is left over, divided by the area filled.",
          "The result lies within 5 percent of the mass of the bid for each component.",
        ),
      ),
      "Seams and lines: walked by Owner, Architect and Contractor together, each fault marked on a plan.",
      paragraph(
        "Where a limit is missed: correct the area and test it again, at the place of the miss and at two more places near it.",
        "Where a limit holds at each point, a miss at one point is a miss, whatever the average.",
      ),
      chosen(
        input,
        "later-tests",
        "Later tests: by the same methods, at the same places as far as they can be found, at the times named with each requirement.",
      ),
    ),
  };
}

export const adjusting = (): Article => ({
  id: "adjusting",
  title: "ADJUSTING AND CLEANING",
  paragraphs: paragraphs(
    "Brush the field, even out infill and top up low places before the field is handed over.",
    "Take off cut fiber, adhesive, thread and litter. Pick up metal with a magnet.",
  ),
});

export const closeout = (input: DraftingInput): Article => ({
  id: "closeout",
  title: "CLOSEOUT ACTIVITIES",
  paragraphs: paragraphs(
    chosen(
      input,
      "training",
      "Training: show the Owner’s staff on the field how to groom, check depth, repair and keep the log. Give at least four hours, with the manual at hand.",
    ),
    "Hand over the submittals of @closeout-submittals before final payment.",
  ),
});

export const protection = (): Article => ({
  id: "protection",
  title: "PROTECTION",
  paragraphs: paragraphs(
    "Keep vehicles, hot work and other trades off the field, or put down boards that spread the load.",
    "Mend or replace at no cost to the Owner what is damaged before substantial completion.",
  ),
});

export const maintenance = (input: DraftingInput, ofRequirements: Article["paragraphs"]): Article => ({
  id: "maintenance",
  title: "MAINTENANCE",
  paragraphs: [
    ...paragraphs(
      `Within the first ${blank(input, "care-months")}, groom the field twice and top up infill that has settled, without extra pay.`,
      "After that the Owner keeps the field by the maintenance manual and writes a log. A missing entry in the log ends no warranty unless it caused the defect.",
    ),
    ...ofRequirements,
  ],
});
