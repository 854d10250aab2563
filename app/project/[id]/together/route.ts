import { z } from "zod";
import { doorAt } from "#lib/access";
import { documentKinds } from "#lib/store";
import { isQuietKind, isQuietPlace } from "#lib/together";
import { currentEditor } from "../../../_data/editor";
import { projectStore } from "../../../_data/store";
import { whoSaved } from "../../../_data/who-saved";
import type { News } from "../_together/news";

const asked = z.discriminatedUnion("does", [
  z.strictObject({
    does: z.literal("shows"),
    /** A random id that the open page drew for itself. */
    page: z.string().regex(/^[\w-]{8,40}$/),
    place: z.string().min(1).max(300),
    documents: z.array(z.strictObject({ kind: z.enum(documentKinds), id: z.string().max(64) })).max(30),
  }),
  z.strictObject({ does: z.literal("leaves"), page: z.string().regex(/^[\w-]{8,40}$/) }),
]);

const answer = (body: News | null, status = 200): Response =>
  Response.json(body, { status, headers: { "cache-control": "no-store" } });

/** An open page says every few seconds where it is, and hears who else is there and what was saved meanwhile. */
export async function POST(request: Request, { params }: RouteContext<"/project/[id]/together">): Promise<Response> {
  const { id } = await params;
  const editor = await currentEditor();
  const store = await projectStore();
  const said = asked.safeParse(await request.json().catch(() => null));
  if (!said.success) return answer(null, 422);
  if (said.data.does === "leaves") {
    await store.presence.left(id, editor, said.data.page);
    return answer(null);
  }
  const { page, place, documents } = said.data;
  if (doorAt(`/project/${id}/${place}`) === null || isQuietPlace(place)) return answer(null, 422);
  const present = await store.presence.seen(id, place, editor, page);
  const last = await store.documents.lastChanges(
    id,
    documents.filter(({ kind }) => !isQuietKind(kind)),
  );
  if (present === null || last === null) return answer(null, 404);
  return answer({
    entries: last.entries,
    documents: last.documents.map((document) => ({ ...document, by: whoSaved(document.by) })),
    others: present.map(({ editor: who, name, since }) => ({ name, since, isSame: who === editor.id })),
  });
}
