import type { PropertyId } from "#lib/claim";
import type { Criterion } from "#lib/criteria";
import { claimedMeasures } from "./measures";

/** What any owner asks of every bid, whatever the criteria: the figures of this trade come from it. */
const alwaysAsked: readonly PropertyId[] = [
  "pile-height",
  "shock-layer",
  "infill-total-areal-density",
  "g-max",
  "system-infiltration",
  "warranty-years",
];

/** The properties that a bid should speak to: those always asked and those that the criteria judge. */
export function wantedProperties(criteria: readonly Criterion[]): readonly PropertyId[] {
  const judged = criteria.flatMap(({ measure }) => claimedMeasures.find(({ id }) => id === measure.id)?.property ?? []);
  return [...new Set([...alwaysAsked, ...judged])];
}
