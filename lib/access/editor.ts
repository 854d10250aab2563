import type { Unlisted } from "#lib/people";
import type { Result } from "#lib/quantity";
import { idOfName } from "./id-of-name";

declare const editor: unique symbol;

/**
 * A person who may change a project. Rules and stored rows go by `id`, which stays the same while the person does; `name`
 * is what people read. Only this file makes one, so a write cannot be made under a name that nothing has looked at. Where
 * nobody signs in the name is what the person says it is, and the id follows from it: it tells people apart who share a
 * machine and proves nothing about who they are. Behind sign-in both are those of the person who signed in.
 * `administers` are the organisations that they administer; null where names are taken on trust.
 */
export type Editor = Readonly<{ id: string; name: string; administers: readonly string[] | null }> & {
  readonly [editor]: true;
};

/** What an editor may do in a project of an organisation whose list of people does not name them. */
export function unlistedIn({ administers }: Editor, organisation: string): Unlisted {
  if (administers === null) return "everything-but-scoring";
  return administers.includes(organisation) ? "administrator" : "nothing";
}

/** What keeps a text from being used as a name. `limit` in characters. */
export type EditorNameProblem = Readonly<
  | { kind: "name-missing" }
  | { kind: "name-too-long"; characters: number; limit: number }
  | { kind: "name-not-printable"; read: string }
>;

const longestName = 80;

/** Control and private characters and half surrogate pairs: nothing a reader of the record could see. */
const notPrintable = /[\p{Cc}\p{Cs}\p{Co}]|[\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff]/u;

const named = (id: string, name: string, administers: Editor["administers"]): Editor =>
  ({ id, name, administers }) as Editor;

/** Stands for everybody who has not given a name. */
export const localEditor: Editor = named("local", "local", null);

/** The editor of this name, as it will stand in the record: outer spaces removed, composed letters (Unicode NFC). */
export function editorNamed(text: string): Result<Editor, EditorNameProblem> {
  const name = text.normalize("NFC").trim();
  const characters = [...name].length;
  if (characters === 0) return { ok: false, problem: { kind: "name-missing" } };
  if (characters > longestName) {
    return { ok: false, problem: { kind: "name-too-long", characters, limit: longestName } };
  }
  if (notPrintable.test(name)) return { ok: false, problem: { kind: "name-not-printable", read: name } };
  return { ok: true, value: named(idOfName(name), name, null) };
}

/** Somebody who has signed in, with the organisations that they administer. */
export const signedInEditor = (
  { id, name }: Readonly<{ id: string; name: string }>,
  administers: readonly string[],
): Editor => named(id, name, administers);

/** Says what was read and what a name looks like. */
export function explainEditorName(problem: EditorNameProblem): string {
  switch (problem.kind) {
    case "name-missing":
      return "Write the name that should stand beside your changes.";
    case "name-too-long":
      return `The name has ${problem.characters} characters. Use at most ${problem.limit}.`;
    case "name-not-printable":
      return `“${problem.read}” holds a character that cannot be seen on a page. Type the name again.`;
  }
}
