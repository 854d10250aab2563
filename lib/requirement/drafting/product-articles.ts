import type { Article, DraftingInput } from "./model";
import { blank, chosen, fact, noted, paragraph, paragraphs } from "./paragraph";
import { limitsImpact } from "./requirement-paragraphs";

/** 2.1: any product that performs, and how others are taken up. */
export const products = (input: DraftingInput): Article => ({
  id: "products",
  title: "PRODUCTS AND EQUALS",
  paragraphs: paragraphs(
    noted(
      "Name no maker here. Where one has to be named, add “or equal” and the characteristics that make an equal.",
      "This Section names no maker. Every product that meets it is accepted.",
    ),
    "Salient characteristics are the requirements of @performance and @materials. No other feature decides whether a product is an equal.",
    paragraph(
      `Substitution before bids are due: a bidder who wants to offer what differs from a requirement and serves as well asks in writing, at least ${blank(input, "substitution-days")} earlier.`,
      "The request compares the product side by side on every salient characteristic, with test reports.",
      "It names the effect on other work, on cost, on time and on the warranty.",
      "The answer goes to all bidders by addendum.",
    ),
    paragraph(
      "Substitution after award is considered where a product can no longer be had or the Owner gains by the change.",
      "It is compared in the same way, and the Owner decides in writing.",
      "A product that is placed without that consent is replaced at no cost to the Owner.",
    ),
  ),
});

/** 2.2: what the finished field has to do. */
export const performance = (input: DraftingInput, ofRequirements: Article["paragraphs"]): Article => ({
  id: "performance",
  title: "PERFORMANCE REQUIREMENTS",
  paragraphs: [
    ...paragraphs(
      "The System as a whole meets each requirement below. Silence in a bid or a submittal is not agreement.",
      noted(
        "Safety: these are limits of tests. They are no certificate that nobody will be hurt; local codes and licensed practice decide.",
        `Meeting a limit does not mean that nobody can be hurt. The field itself is tested${limitsImpact(input) ? `, at ${fact(input.facts, "testPoints")} points or more where impact is concerned` : ""}.`,
      ),
    ),
    ...ofRequirements,
  ],
});

/** 2.3: materials by what can be measured on them. */
export const materials = (ofRequirements: Article["paragraphs"]): Article => ({
  id: "materials",
  title: "MATERIALS",
  paragraphs: [
    ...paragraphs(
      noted(
        "Fix the result or the recipe of a property, not both. Leave out what @performance settles already.",
        "Make-up is the bidder’s choice within this Article. The bid states pile height, pile mass, yarn, backing, infill mass by component, infill depth and shock layer of the System offered. The System delivered keeps to these within the tolerances below.",
      ),
      paragraph(
        "Tolerances between bid and delivery, unless a requirement below says otherwise:",
        "Pile height: plus or minus 1/8 in.",
        "Pile mass and total carpet mass: from 5 percent less to 10 percent more.",
        "Infill mass of each component: plus or minus 5 percent.",
        "Shock layer thickness: plus or minus 10 percent.",
      ),
    ),
    ...ofRequirements,
    ...paragraphs(
      "Carpet: stabilized against ultraviolet light, with drainage through the backing and no loose tufts.",
      "Infill: clean, dry, free of metal, glass and dust, with grading and bulk density stated for each component.",
      "Where a law in force at the site limits a substance in carpet, infill or shock layer, the bid shows by test report that the limit is kept.",
    ),
  ],
});

/** 2.4 and 2.5: what goes with it and what is checked at the plant. */
export const accessories = (): Article => ({
  id: "accessories",
  title: "ACCESSORIES",
  paragraphs: paragraphs(
    "Seam tape: at least 12 in wide, so that both edges lie on it along the whole seam.",
    "Adhesive and thread: resistant to water and to the temperatures of the site.",
    "Edge fixing: holds the carpet without fasteners that stand above the backing.",
    "Drain, box and sleeve covers: level with the backing and covered with the same carpet and infill.",
  ),
});

export const sourceQualityControl = (input: DraftingInput): Article => ({
  id: "source-quality-control",
  title: "SOURCE QUALITY CONTROL",
  paragraphs: paragraphs(
    "The maker measures pile height and pile mass on each production run and hands in the records with the delivery.",
    "Infill: grading and bulk density for each lot of 100 tons or part of it.",
    chosen(
      input,
      "owner-engages-laboratory",
      "The Owner may take samples of carpet and infill on the site and have them tested against the submittals.",
    ),
  ),
});
