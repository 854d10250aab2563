import { documentSchemas, projectRules } from "#lib/evaluation";
import { environmentStore, firstOrganisation } from "#lib/store";

/** The store of this installation with the documents that a project is made of and the rules of changing them. */
export const projectStore = () =>
  environmentStore({
    schemas: documentSchemas,
    guard: projectRules,
    scope: { kind: "organisation", organisation: firstOrganisation },
  });

export type ProjectStore = Awaited<ReturnType<typeof projectStore>>;
