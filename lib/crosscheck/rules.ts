import type { Rule } from "./model";
import { componentsAgainstTotal } from "./rules/components-against-total";
import { impactByAnotherMethod } from "./rules/impact-by-another-method";
import { infillBuriesPile } from "./rules/infill-buries-pile";
import { lightInfillWithoutShockLayer } from "./rules/light-infill-without-shock-layer";

/** Every rule that is applied, in the order in which findings of one severity are told. A new rule is a file and a line here. */
export const rules: readonly Rule[] = [
  componentsAgainstTotal,
  infillBuriesPile,
  impactByAnotherMethod,
  lightInfillWithoutShockLayer,
];
