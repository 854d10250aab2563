import { cookies } from "next/headers";
import { type Editor, editorCookie, editorFromCookie } from "#lib/access";

/** Who is at the keyboard, as the record will name them. */
export async function currentEditor(): Promise<Editor> {
  return editorFromCookie((await cookies()).get(editorCookie)?.value);
}
