import { listed } from "#lib/figure";
import { type Requirement, type SubmittalKind, submittalKinds } from "../model";
import type { Article, DraftingInput, Paragraph } from "./model";
import { chosen, noted, paragraph, paragraphs } from "./paragraph";

type SubmittalArticle = (typeof submittalKinds)[SubmittalKind]["article"];

/** What clauses and the owner ask for under one article, by kind. */
function asked({ requirements, submittals }: DraftingInput, article: SubmittalArticle): readonly Paragraph[] {
  const kinds = (Object.keys(submittalKinds) as SubmittalKind[]).filter(
    (kind) => submittalKinds[kind].article === article,
  );
  return kinds.flatMap((kind) => {
    const ofClauses = requirements
      .filter((each: Requirement) => each.isOn && each.submittals.includes(kind))
      .map(({ label }) => label);
    const ofOwner = submittals.filter((each) => each.kind === kind).map(({ item }) => `${item.replace(/\.$/, "")}.`);
    if (ofClauses.length + ofOwner.length === 0) return [];
    const names = ofClauses.map((label) => `“${label}”`);
    const shows = names.length === 0 ? "" : ` for ${listed(names)}`;
    return [
      paragraph(
        `${submittalKinds[kind].label}${shows}${ofOwner.length === 0 ? "." : ofClauses.length === 0 ? ":" : ", and:"}`,
        ...ofOwner,
      ),
    ];
  });
}

/** 1.5: what has to be answered before work goes on. */
export const actionSubmittals = (input: DraftingInput): Article => ({
  id: "action-submittals",
  title: "ACTION SUBMITTALS",
  paragraphs: [
    ...paragraphs(
      "Product data of each part of the System: make-up, mass, dimensions, polymers and instructions for use.",
      paragraph(
        "Shop drawings:",
        "Layout of rolls and seams, with roll numbers and direction of pile.",
        "Layout of lines and marks, with color, width and whether they are tufted or inlaid.",
        "Details of edges, drains, sleeves and other openings.",
      ),
      paragraph(
        "Samples:",
        "Carpet of each color, 18 by 18 in, one of them with a seam and a line.",
        "Each infill, 1 lb in a clear bag.",
        "Shock layer, where offered, 12 by 12 in.",
      ),
    ),
    ...asked(input, "action"),
    ...paragraphs(
      "The Architect answers within 14 days of receipt. Review is for agreement with this Section in general and does not change the contract.",
    ),
  ],
});

/** 1.6: what is handed in for the record and may be rejected. */
export const informationalSubmittals = (input: DraftingInput): Article => ({
  id: "informational-submittals",
  title: "INFORMATIONAL SUBMITTALS",
  paragraphs: [
    ...paragraphs(
      paragraph(
        "Test reports for each requirement of @performance and @materials that names a method. Each report states:",
        "Laboratory, its accreditation number and the date of the test.",
        "Method with its edition, and the condition of the sample.",
        "The build tested, so that it can be held against the build offered.",
        "Each reading, the average, and all pages.",
      ),
      "Qualifications of the installer by @quality-assurance.",
    ),
    ...asked(input, "informational"),
    ...paragraphs(
      chosen(
        input,
        "mass-by-tickets",
        "Weigh tickets of all infill, handed over on the day of delivery, with moisture where the material takes up water.",
      ),
      "Daily records by @field-conditions.",
    ),
  ],
});

/** 1.7: what closes the work. */
export const closeoutSubmittals = (input: DraftingInput): Article => ({
  id: "closeout-submittals",
  title: "CLOSEOUT SUBMITTALS",
  paragraphs: [
    ...paragraphs(
      "Warranty as signed, by @warranty.",
      "Maintenance manual: grooming, depth checks, repair, cleaning, snow, loads allowed, and every duty on which the warranty depends.",
      "Drawings of the field as built, with seams, drains and sleeves.",
      "All reports of tests at completion.",
    ),
    ...asked(input, "closeout"),
    ...paragraphs(
      chosen(
        input,
        "end-of-life",
        "Plan for the end of life: how carpet and infill are taken up, where they go, and what is paid by whom.",
      ),
    ),
  ],
});

/** 1.8: extra stock. */
export const maintenanceMaterials = (input: DraftingInput): Article => ({
  id: "maintenance-materials",
  title: "MAINTENANCE MATERIAL SUBMITTALS",
  paragraphs: paragraphs(
    chosen(
      input,
      "maintenance-stock",
      noted(
        "Amounts are common practice; set them to the size and use of the field.",
        paragraph(
          "Hand over, in closed and labeled packs:",
          "Carpet from the same production run, at least 300 ft² of field color and 30 ft of each line.",
          "Each infill, at least 0.5 percent of the mass placed.",
          "Seam tape and adhesive for 50 ft of seam.",
        ),
      ),
    ) ?? "No maintenance materials are asked for.",
  ),
});
