import { componentsAgainstTotal } from "./components-against-total";
import type { Finding, Severity } from "./finding";
import { impactByAnotherMethod } from "./impact-by-another-method";
import { infillBuriesPile } from "./infill-buries-pile";
import { lightInfillWithoutShockLayer } from "./light-infill-without-shock-layer";
import type { CheckedBid, Rule } from "./model";

/** Every rule that is applied. A new rule is a file and a line here. */
const rules: readonly Rule[] = [
  componentsAgainstTotal,
  infillBuriesPile,
  impactByAnotherMethod,
  lightInfillWithoutShockLayer,
];

const order: readonly Severity[] = ["can't be true", "needs an answer", "note"];

/** What does not go together in a bid, the most serious first. */
export const findings = (bid: CheckedBid): readonly Finding[] =>
  rules
    .flatMap((rule) => rule(bid))
    .toSorted((one, other) => order.indexOf(one.severity) - order.indexOf(other.severity));
