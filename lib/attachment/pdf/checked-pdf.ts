import { failed, type Result, succeeded } from "#lib/quantity";
import { ascii, placeOf } from "../bytes";
import { attachmentLimits } from "../limits";
import type { ActiveContent, AttachmentProblem } from "../problem";
import { namesIn } from "./names";
import { packedObjects } from "./packed-objects";

/**
 * Names that stand in every PDF that runs, opens or sends something, by what they bring.
 * @source ISO 32000-1 7.7.4, 7.11.4, 12.5.6, 12.6.4, 12.7.5, 12.7.8, 13.2
 */
const activeNames: ReadonlyMap<string, ActiveContent> = new Map([
  ["JavaScript", "script"],
  ["Rendition", "script"], // a rendition may carry a script of its own
  ["Launch", "launch"],
  ["EmbeddedFile", "embedded-file"],
  ["EmbeddedFiles", "embedded-file"],
  ["FileAttachment", "embedded-file"],
  ["GoToE", "embedded-file"],
  ["RichMedia", "media"],
  ["Movie", "media"],
  ["Sound", "media"],
  ["3D", "media"],
  ["XFA", "form-script"],
  ["SubmitForm", "data-sender"],
  ["ImportData", "data-sender"],
] as const);

const endMark = ascii("%%EOF");
/** How far from its end a file may have its end mark. @source ISO 32000-1 Annex H, note 18 */
const endWithin = 1024;

/**
 * Looks into a PDF: whether it ends, whether it is locked, and whether it holds what a reading program might run or open.
 * Names are looked up in the whole file and in its packed objects. It is a check and no guarantee: the file is never run
 * here and always handed out so that a browser runs nothing of it.
 */
export function checkedPdf(bytes: Uint8Array): Result<null, AttachmentProblem> {
  if (placeOf(bytes, endMark, Math.max(0, bytes.length - endWithin)) === -1)
    return failed({ kind: "not-whole", what: "pdf" });
  let left: number = attachmentLimits.unpackedBytes;
  for (const { name, end } of namesIn(bytes)) {
    if (name === "Encrypt") return failed({ kind: "locked" });
    const content = activeNames.get(name);
    if (content !== undefined) return failed({ kind: "active", content });
    if (name !== "ObjStm") continue;
    const objects = packedObjects(bytes, end, left);
    if (objects === null) return failed({ kind: "not-looked-into" });
    left -= objects.length;
    for (const inner of namesIn(objects)) {
      const packed = activeNames.get(inner.name);
      if (packed !== undefined) return failed({ kind: "active", content: packed });
    }
  }
  return succeeded(null);
}
