import { listed } from "#lib/figure";
import type { FamilyId } from "./families";
import { methodOf } from "./find";
import type { Property } from "./properties/properties";
import { type Influence, variesWith } from "./varies-with";

const names: Readonly<Record<Influence, string>> = {
  age: "how old or worn the surface was",
  moisture: "whether it was wet or dry",
  temperature: "how warm it was",
};

/** With which other figures one of this property compares, and what has to be stated with it. Whole sentences. */
export function comparesBy(property: Property): string {
  const influences = variesWith(property.id).map((influence) => names[influence]);
  const stated = influences.length === 0 ? [] : [`State with it ${listed(influences)}.`];
  return [methodSentence(property), ...stated].join(" ");
}

function methodSentence({ methods, comparedBy }: Property): string {
  if (methods.length === 0) return "It compares as stated, since no test stands behind it.";
  if (comparedBy === "missile") return "Figures compare where the same missile was dropped.";
  const families = new Map<FamilyId, readonly string[]>();
  for (const id of methods) {
    const { measuresLike, designation } = methodOf(id);
    families.set(measuresLike, [...(families.get(measuresLike) ?? []), designation]);
  }
  const groups = [...families.values()].map((group) => listed(group));
  return groups.length === 1
    ? `Figures by ${groups[0]} compare.`
    : `Figures compare only within one of these groups: ${groups.join("; ")}.`;
}
