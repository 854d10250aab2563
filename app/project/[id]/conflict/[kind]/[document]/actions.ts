"use server";
import { redirect } from "next/navigation";
import { z } from "zod";
import { documentKinds } from "#lib/store";
import { type Change, joined, type Side } from "#lib/together";
import { pageOfDocument } from "../../../../../_components/form/conflict-page";
import type { Reply } from "../../../../../_components/reply-form";
import { currentEditor } from "../../../../../_data/editor";
import { notDone } from "../../../../../_data/reply";
import { projectStore } from "../../../../../_data/store";
import { saveDocument } from "../../../_actions/save-document";
import { atFirst, choiceName, twoVersions } from "./_choices/two-versions";

const asked = z.strictObject({
  project: z.string(),
  kind: z.enum(documentKinds),
  id: z.string(),
  /** The versions that were shown: the one under the draft, and the one that stood. */
  basedOn: z.number().int(),
  version: z.number().int(),
});

const sides: readonly unknown[] = ["mine", "theirs"] satisfies readonly Side[];
const isSide = (value: unknown): value is Side => sides.includes(value);

/** Brings two versions together as somebody chose, place by place, and saves the result over the one that stands. */
export async function saveChosen(shown: unknown, _before: Reply, form: FormData): Promise<Reply> {
  const { basedOn, version, ...where } = asked.parse(shown);
  const page = pageOfDocument(where);
  if (page === null) return notDone("This document has no two versions to choose from.", form);
  const both = await twoVersions(where);
  if (both.kind !== "two-versions" || both.version !== version || both.basedOn !== basedOn)
    return notDone(
      "One of the two versions has changed since this page was opened. Open it again and choose anew.",
      form,
    );
  const choices = new Map(
    both.changes.map((change, index) => [change.path.join("\n"), form.get(choiceName(index)) ?? atFirst(change)]),
  );
  const chosen = ({ path }: Change) => choices.get(path.join("\n"));
  const open = both.changes.filter((change) => !isSide(chosen(change)));
  if (open.length > 0)
    return notDone(
      `${open.length === 1 ? "One place is" : `${open.length} places are`} still open: choose yours or theirs there.`,
      form,
    );
  const body = joined(both, (change) => chosen(change) as Side);
  const outcome = await saveDocument({ ...where, version }, body);
  switch (outcome.kind) {
    case "saved":
      await (await projectStore()).drafts.clear({ ...where, version: basedOn }, await currentEditor());
      return redirect(page);
    case "rejected": // kept as a draft over what stands: its page shows what can't be read in it
    case "kept":
      return redirect(page);
    case "conflict":
      return notDone(`${outcome.savedBy} saved just now. Open this page again and choose anew.`, form);
    case "refused":
      return notDone(outcome.reason, form);
    case "gone":
      return notDone("This was removed meanwhile. Your text is kept as a draft.", form);
  }
}
