import type { ActId, Actor, Person, Unlisted } from "./model";
import { actLabels, roles } from "./roles";

/** Nobody scores without standing on the list: a score is a named person's. */
const allButScoring = (Object.keys(actLabels) as ActId[]).filter((act) => act !== "score");

/**
 * Whoever is at the keyboard, with what they may do in a project. The one place where a person becomes rights: sign-in
 * hands in the same id that it has proven.
 * @param who id and name of whoever asks, and what they may do without standing on the list
 */
export function actorOf(
  people: readonly Person[],
  { id, name, unlisted }: Readonly<{ id: string; name: string; unlisted: Unlisted }>,
): Actor {
  const person = people.find((candidate) => candidate.id === id);
  const held = person === undefined ? [] : person.roles;
  const listed = held.flatMap((role) => roles[role].acts);
  const asAdministrator = unlisted === "administrator" ? roles.administrator.acts : [];
  if (person === undefined)
    return { id, name, roles: [], acts: unlisted === "everything-but-scoring" ? allButScoring : asAdministrator };
  return { id, name: person.name, roles: held, acts: [...new Set([...listed, ...asAdministrator])] };
}

/** Why somebody may not do something; null where they may. */
export function actRefused({ acts, name, roles: held }: Actor, act: ActId): string | null {
  if (acts.includes(act)) return null;
  const may = (Object.keys(roles) as (keyof typeof roles)[]).filter((role) => roles[role].acts.includes(act));
  const whose = may.map((role) => roles[role].label).join(" or ");
  if (held.length === 0) return `To ${actLabels[act]} takes a person on the list of people with the role ${whose}.`;
  const has = held.map((role) => roles[role].label).join(" and ");
  return `${name} is ${has} here. To ${actLabels[act]} takes the role ${whose}.`;
}
