import { z } from "zod";
import type { Person, RoleId } from "./model";
import { roles } from "./roles";

const roleIds = Object.keys(roles) as [RoleId, ...RoleId[]];

const personSchema = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/, "Expected an id of small letters, digits and hyphens."),
  name: z.string().trim().min(1, "Write the person’s name.").max(80, "Expected at most 80 characters."),
  position: z.string().trim().max(120, "Expected at most 120 characters.").default(""),
  roles: z.array(z.enum(roleIds)).min(1, "Choose at least one role.").max(roleIds.length),
}) satisfies z.ZodType<Person, unknown>;

/** The people of a project, each once. Absent in what was stored before people were listed: nobody is on the list then. */
export const peopleSchema = z.strictObject({
  people: z
    .array(personSchema)
    .max(60, "Expected at most 60 people.")
    .superRefine((people, context) => {
      for (const [index, { id, name }] of people.entries()) {
        if (people.findIndex((other) => other.id === id) === index) continue;
        const message = `“${name}” is on the list already. Two people of one name need something that tells them apart, such as a middle initial.`;
        context.addIssue({ code: "custom", path: [index, "name"], message });
      }
    })
    .default([]),
});

/** The people as forms and files hold them. */
export type PeopleText = z.input<typeof peopleSchema>;
