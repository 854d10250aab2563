import type { DocumentStart } from "../../../../_components/form/start-of";

/** What a form over the costing starts with. Version 0 stands for a costing that nobody has written yet. */
export type CostingStart<Values> = DocumentStart<Values>;
