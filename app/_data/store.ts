import { documentSchemas } from "#lib/evaluation";
import { environmentStore } from "#lib/store";

/** The store of this installation with the documents that a project is made of. */
export const projectStore = () => environmentStore({ schemas: documentSchemas });

export type ProjectStore = Awaited<ReturnType<typeof projectStore>>;
