import type { CostingText } from "#lib/evaluation";
import type { CostingStart } from "../project/[id]/_components/price/costing-start";
import { documentStart } from "./document-start";

/**
 * The costing of a project for a form that edits part of it.
 * @param filled fills in what the form has fields for and the text does not say yet
 */
export const costingStart = <Values>(
  project: string,
  stored: Readonly<{ version: number; body: CostingText }> | null,
  filled: (costing: CostingText) => Values,
): Promise<CostingStart<Values>> =>
  documentStart<CostingText, Values>({ project, kind: "costing", id: "costing" }, stored, {}, filled);
