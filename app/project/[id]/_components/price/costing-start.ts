import type { DocumentAddress } from "../../../../_components/form/save-outcome";
import type { Draft } from "../../../../_components/form/start-of";

/** What a form over the costing starts with. Version 0 stands for a costing that nobody has written yet. */
export type CostingStart<Values> = Readonly<{
  where: DocumentAddress;
  version: number;
  values: Values;
  draft: Draft<Values> | null;
}>;
