import { type Editor, editorNamed, localEditor } from "./editor";

/** Name of the cookie that holds the editor's name, percent-encoded. */
export const editorCookie = "evenfield-editor";

/** The value to put into the cookie. */
export const cookieFromEditor = (editor: Editor): string => encodeURIComponent(editor.name);

/** The editor in a cookie value; without a cookie, or with one that holds no name, the local editor. */
export function editorFromCookie(value: string | undefined): Editor {
  const parsed = editorNamed(decoded(value ?? ""));
  return parsed.ok ? parsed.value : localEditor;
}

/** Frameworks hand cookie values over decoded or not; a name with a lone “%” is then no encoding but the name itself. */
function decoded(value: string): string {
  try {
    return decodeURIComponent(value);
  } catch (problem) {
    if (problem instanceof URIError) return value;
    throw problem;
  }
}
