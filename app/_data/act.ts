import { localEditor } from "#lib/access";
import type { ProjectAct } from "#lib/evaluation";
import type { Doer } from "#lib/procedure";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "./editor";
import { projectStore } from "./store";

/** Whoever acts, as documents and sentences name them: “frozen by somebody who gave no name”. */
const doerNamed = ({ id, name }: Doer): Doer => ({
  id,
  name: id === localEditor.id ? "somebody who gave no name" : name,
});

/** Does what somebody at the keyboard asks for, and returns the sentences that say why not; none where it is done. */
export async function act(project: string, made: (editor: Doer) => ProjectAct): Promise<readonly string[]> {
  const editor = await currentEditor();
  const outcome = await (await projectStore()).documents.act(project, made(doerNamed(editor)), editor);
  switch (outcome.kind) {
    case "done":
      return [];
    case "lacks":
      return outcome.sentences;
    case "refused":
      return [explainRefusal(outcome.because)];
    case "gone":
      return ["This project is no longer here."];
  }
}
