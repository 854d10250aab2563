import type { SpecificationText } from "#lib/requirement";
import type { DocumentStart } from "../../../../_components/form/start-of";
import { documentStart } from "../../../../_data/document-start";
import {
  type AskedOfSystems,
  filledSpecification,
  type SpecificationValues,
} from "../_components/specification-values";

/** What the owner decides about the section, for a form that edits part of it. */
export const specificationStart = (
  project: string,
  stored: Readonly<{ version: number; body: SpecificationText }> | null,
  asked?: AskedOfSystems,
): Promise<DocumentStart<SpecificationValues>> =>
  documentStart<SpecificationText, SpecificationValues>(
    { project, kind: "specification", id: "specification" },
    stored,
    {},
    (body) => filledSpecification(body, asked),
  );
