import type { ActId, Actor, Person } from "./model";
import { actLabels, roles } from "./roles";

/** Nobody scores without standing on the list: a score is a named person's. */
const allButScoring = (Object.keys(actLabels) as ActId[]).filter((act) => act !== "score");

/**
 * Whoever is at the keyboard, with what they may do in a project. The one place where a person becomes rights: sign-in
 * hands in the same id that it has proven.
 * @param who id and name of whoever asks
 * @param unlisted what somebody may do who is not on the list: on one computer, where names are taken on trust,
 * everything but scoring; behind sign-in, nothing
 */
export function actorOf(
  people: readonly Person[],
  { id, name }: Readonly<{ id: string; name: string }>,
  unlisted: "everything-but-scoring" | "nothing",
): Actor {
  const person = people.find((candidate) => candidate.id === id);
  if (person === undefined) return { id, name, roles: [], acts: unlisted === "nothing" ? [] : allButScoring };
  return {
    id,
    name: person.name,
    roles: person.roles,
    acts: [...new Set(person.roles.flatMap((role) => roles[role].acts))],
  };
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
