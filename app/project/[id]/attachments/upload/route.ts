import { revalidatePath } from "next/cache";
import { z } from "zod";
import {
  type AttachmentOwner,
  attachmentLimits,
  attachmentSchema,
  checkedContent,
  explainAttachment,
  safeName,
} from "#lib/attachment";
import { explainRefusal } from "#lib/store";
import { currentEditor } from "../../../../_data/editor";
import { projectStore } from "../../../../_data/store";
import { received } from "../_files/received";
import type { UploadOutcome } from "../_files/upload-outcome";

/** The name a browser sends, percent-encoded because a header holds plain letters only; empty where it can’t be read. */
function sentName(encoded: string | null): string {
  try {
    return decodeURIComponent(encoded ?? "");
  } catch {
    return "";
  }
}

const asked = z.object({
  bid: z.string().max(64).optional(),
  submittal: z.string().max(64).optional(),
  substitution: z.string().max(64).optional(),
  title: z.string().max(300).default(""),
});

function ownerOf({ bid, submittal, substitution }: z.output<typeof asked>): AttachmentOwner {
  if (bid !== undefined) return { kind: "bid", bid };
  if (submittal !== undefined) return { kind: "submittal", submittal };
  return substitution === undefined ? { kind: "project" } : { kind: "substitution", substitution };
}

const answer = (outcome: UploadOutcome, status = 200): Response =>
  Response.json(outcome, { status, headers: { "cache-control": "no-store" } });
const refused = (problem: string): Response => answer({ kind: "refused", problem }, 422);

/** Takes one file as it is. It is looked at, kept with its hash and entered in the record, or refused with a reason. */
export async function POST(
  request: Request,
  { params }: RouteContext<"/project/[id]/attachments/upload">,
): Promise<Response> {
  const { id } = await params;
  const wanted = asked.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!wanted.success)
    return refused("The address the file was sent to can’t be read. Send it from Evenfield’s own page.");
  const sent = await received(request.body);
  if (!sent.ok) return refused(explainAttachment(sent.problem));
  const checked = checkedContent(sent.value);
  if (!checked.ok) return refused(explainAttachment(checked.problem));
  const name = safeName(sentName(request.headers.get("x-file-name")), checked.value);
  const facts = { name, title: wanted.data.title, of: ownerOf(wanted.data), kind: checked.value, note: "" };
  attachmentSchema.parse({ ...facts, bytes: sent.value.length, sha256: "0".repeat(64) }); // the hash is the store's
  const kept = await (await projectStore()).contents.keep(id, facts, sent.value, await currentEditor());
  switch (kept.kind) {
    case "saved":
      revalidatePath(`/project/${id}`, "layout");
      return answer({ kind: "kept", id: kept.id, name });
    case "supplied":
      revalidatePath(`/project/${id}`, "layout");
      return answer(kept);
    case "too-many-files":
      return refused(`A project keeps at most ${attachmentLimits.files} files. Remove one that is no longer needed.`);
    case "refused":
      return refused(explainRefusal(kept.because));
    case "gone":
      return refused("This project is no longer here.");
  }
}
