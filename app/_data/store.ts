import { documentSchemas, projectRules } from "#lib/evaluation";
import { environmentStore } from "#lib/store";
import { currentScope } from "./asker";

/** The store of this installation, as far as whoever asks may reach, with the rules of changing a project. */
export const projectStore = async (organisation?: string) =>
  environmentStore({
    ...{ schemas: documentSchemas, guard: projectRules, scope: await currentScope() },
    ...(organisation === undefined ? {} : { organisation }),
  });

export type ProjectStore = Awaited<ReturnType<typeof projectStore>>;
