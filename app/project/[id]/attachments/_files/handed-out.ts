import { type Attachment, contentDisposition, fileKinds } from "#lib/attachment";
import { loadProject } from "../../../../_data/load-project";
import { projectStore } from "../../../../_data/store";
import { notHere } from "../../_file-name";

/** A part at a time, as fast as it is taken, so that a large file never stands in memory as a whole. */
function streamOf(parts: AsyncGenerator<Uint8Array>): ReadableStream<Uint8Array> {
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await parts.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
    async cancel() {
      await parts.return(undefined);
    },
  });
}

/** A kept file, to be saved or shown. Its kind is that of its content and the browser may guess no other. */
export async function handedOut(
  { id, attachment }: Readonly<{ id: string; attachment: string }>,
  how: "attachment" | "inline",
): Promise<Response> {
  const loaded = await loadProject(id);
  const known: Attachment | undefined = loaded?.documents.attachments.find((each) => each.id === attachment)?.model;
  if (known === undefined) return notHere("file");
  const file = await (await projectStore()).contents.open(id, known.sha256);
  if (file === null) return notHere("file yet: the project came from another computer without it. Add it there");
  return new Response(streamOf(file.parts()), {
    headers: {
      "content-type": fileKinds[known.kind].mediaType,
      "content-disposition": contentDisposition(how, known.name),
      "cache-control": "no-store",
    },
  });
}
