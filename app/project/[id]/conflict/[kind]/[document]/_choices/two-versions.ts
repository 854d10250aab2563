import { type Change, changes, type Side } from "#lib/together";
import type { DocumentAddress } from "../../../../../../_components/form/save-outcome";
import { bidDraft, bodyOfVersion, draftOf } from "../../../../../../_data/draft-of";
import { projectStore } from "../../../../../../_data/store";
import { whoSaved } from "../../../../../../_data/who-saved";

/** A draft of this editor beside the document as it stands, both made from one version of it. */
export type TwoVersions = Readonly<
  | {
      kind: "two-versions";
      base: unknown;
      mine: unknown;
      theirs: unknown;
      /** The version under the draft, and the one that stands. */
      basedOn: number;
      version: number;
      savedBy: string;
      changes: readonly Change[];
    }
  /** Nothing to choose: there is no draft, or it is typed over what stands. */
  | { kind: "no-draft" }
  | { kind: "draft-of-this" }
  | { kind: "gone" }
>;

export async function twoVersions(where: DocumentAddress): Promise<TwoVersions> {
  const stored = await (await projectStore()).documents.read(where);
  if (stored === null) return { kind: "gone" };
  const draft = where.kind === "bid" ? await bidDraft(where.project, where.id) : await draftOf(where);
  if (draft === null) return { kind: "no-draft" };
  const { version, body: theirs, updatedBy } = stored;
  if (draft.basedOn === version) return { kind: "draft-of-this" };
  const three = {
    base: await bodyOfVersion({ ...where, version: draft.basedOn }),
    mine: draft.values as unknown,
    theirs: theirs as unknown,
  };
  return {
    ...{ kind: "two-versions", basedOn: draft.basedOn, version, savedBy: whoSaved(updatedBy), ...three },
    changes: changes(three),
  };
}

/** The name of a choice in a form: by its number, as the same two versions always differ at the same places. */
export const choiceName = (index: number): string => `choice-${index}`;

/** What stands for a change until somebody chooses; null where both changed the same. */
export const atFirst = ({ by }: Change): Side | null => (by === "both" ? null : by);
