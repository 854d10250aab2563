import { type AmendedKind, type Doer, fieldChanges, heldParts, lockOn, type Procedure } from "#lib/procedure";
import type { BriefText, RequirementsText } from "../../schema";
import { doerOf, lacks, type ProjectAct, type WrittenDocument, writes } from "../project-documents";
import { procedureIn } from "../standing-project";

/** A document as it shall read from now on, over the version that whoever amends it had before their eyes. */
export type AmendedText = Readonly<
  { version: number } & ({ document: "requirements"; body: RequirementsText } | { document: "brief"; body: BriefText })
>;

const amendedDocument = (amended: AmendedText): WrittenDocument =>
  amended.document === "brief"
    ? { kind: "brief", id: "brief", body: amended.body }
    : { kind: "requirements", id: "requirements", body: amended.body };

/** What an amendment would change of what is frozen, as text. `from` is how the document stands, as its form shows it. */
export function amendedFields(
  procedure: Procedure,
  document: AmendedKind,
  { from, to }: Readonly<{ from: unknown; to: unknown }>,
) {
  const lock = lockOn(procedure, document);
  return lock === null ? [] : fieldChanges(heldParts(lock, from), heldParts(lock, to));
}

/**
 * Changes what is frozen, with the reason and every entry that it changes, for all later pages to show.
 * @param shown fills in what the form shows for what was never written, so that it does not count as changed
 */
export const amend =
  (editor: Doer, amended: AmendedText, reason: string, shown: (text: unknown) => unknown): ProjectAct =>
  ({ standing, at }) => {
    const document: AmendedKind = amended.document;
    const [entered] = standing(document);
    if (entered === undefined) return lacks("There is nothing to amend.");
    if (entered.version !== amended.version)
      return lacks("Somebody amended it after this page was opened. Look at it again before you amend it.");
    const texts = { from: shown(entered.body), to: amended.body };
    const changes = amendedFields(procedureIn(standing), document, texts);
    if (reason.trim() === "") return lacks("Say why this is amended. The reason stands on every later page.");
    if (changes.length === 0) return lacks("Nothing that is frozen would change, so there is nothing to amend.");
    const [procedure] = standing("procedure");
    const amendment = { at, by: doerOf(editor), reason: reason.trim(), document, changes: [...changes] };
    const amendments = [...(procedure?.body.amendments ?? []), amendment];
    return writes(amendedDocument(amended), {
      ...{ kind: "procedure", id: "procedure" },
      body: { ...procedure?.body, amendments },
    });
  };
