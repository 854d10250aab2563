import type { Article, DraftingInput } from "./model";
import { blank, chosen, noted, paragraph, paragraphs } from "./paragraph";

/** 1.12: what is promised and what follows when it is missed. */
export const warranty = (input: DraftingInput, ofRequirements: Article["paragraphs"]): Article => ({
  id: "warranty",
  title: "WARRANTY",
  paragraphs: [
    ...paragraphs(
      noted(
        "Eight years are usual. Let a longer term score instead of asking for it, and look at what is covered in each year.",
        "Contractor and maker give a joint written warranty for the whole System. It begins on the day of substantial completion.",
      ),
    ),
    ...ofRequirements,
    ...paragraphs(
      paragraph(
        "The warranty covers, with labor, removal and freight:",
        "Fiber, backing, seams, lines and edges.",
        `Limits in service, where the field is kept by the maintenance manual: ${blank(input, "warranty-limits")}.`,
        "Infill that hardens, breaks down or is washed out in normal use.",
      ),
      paragraph(
        "The warranty states:",
        "Whether it covers the full cost in each year or a falling share.",
        "Every use, load or duty that limits it. Duties that are not stated when the bid is made do not limit it.",
        "What is left out.",
      ),
      paragraph(
        "Steps when a limit is missed:",
        "Groom and even out the infill, then test again.",
        "Top up or change infill, then test again.",
        "Replace the parts that still miss the limit.",
        "Replace the System where more than half of it misses the limit.",
      ),
      `Response: the warrantor looks at a reported defect within ${blank(input, "defect-look")} and mends it within ${blank(input, "defect-mend")}.`,
      chosen(
        input,
        "insured-warranty",
        "Insurance: a third party insures the warranty for its whole term. The policy names the limit for each claim and for all claims, and stays in force if a firm closes.",
      ),
      "The warranty passes to a later owner of the field.",
    ),
  ],
});
