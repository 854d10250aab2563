export { actorOf, actRefused } from "./actor";
export type { ActId, Actor, Person, RoleId, Unlisted } from "./model";
export { actLabels, roles } from "./roles";
export { type PeopleText, peopleSchema } from "./schema";
