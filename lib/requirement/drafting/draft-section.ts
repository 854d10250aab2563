import { evaluationAppendices } from "./evaluation-appendix";
import * as execution from "./execution-articles";
import * as general from "./general-articles";
import type { DraftingInput, DraftSection } from "./model";
import * as product from "./product-articles";
import { requirementParagraphs } from "./requirement-paragraphs";
import * as submittals from "./submittal-articles";
import { warranty } from "./warranty-article";

/**
 * The section as a tree: general, products, execution, and the appendices on bid form and evaluation. Order of articles
 * as in the open section format; all words are our own.
 * @source order of parts and articles: section format of 2008, article titles from memory, parts and place of warranty as read in filed sections
 */
export function draftSection(input: DraftingInput): DraftSection {
  const asked = (place: Parameters<typeof requirementParagraphs>[1]) => requirementParagraphs(input, place);
  return {
    number: input.number,
    title: "SYNTHETIC GRASS SURFACING",
    parts: [
      {
        title: "GENERAL",
        articles: [
          general.summary(input),
          general.references(input),
          general.definitions(),
          general.administration(input),
          submittals.actionSubmittals(input),
          submittals.informationalSubmittals(input),
          submittals.closeoutSubmittals(input),
          submittals.maintenanceMaterials(input),
          general.qualityAssurance(input, asked("quality")),
          general.delivery(),
          general.fieldConditions(input),
          warranty(input, asked("warranty")),
        ],
      },
      {
        title: "PRODUCTS",
        articles: [
          product.products(input),
          product.performance(input, asked("performance")),
          product.materials(asked("materials")),
          product.accessories(),
          product.sourceQualityControl(input),
        ],
      },
      {
        title: "EXECUTION",
        articles: [
          execution.examination(input),
          execution.preparation(),
          execution.installation(),
          execution.tolerances(),
          execution.fieldQualityControl(input),
          execution.adjusting(),
          execution.closeout(input),
          execution.protection(),
          execution.maintenance(input, asked("maintenance")),
        ],
      },
    ],
    appendices: evaluationAppendices(input),
  };
}
