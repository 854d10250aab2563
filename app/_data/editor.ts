import { notFound } from "next/navigation";
import type { Editor } from "#lib/access";
import { askingEditor } from "./asker";

/** Who changes something, as the record will name them. Whoever reads by a public link changes nothing and gets no further. */
export async function currentEditor(): Promise<Editor> {
  return (await askingEditor()) ?? notFound();
}
