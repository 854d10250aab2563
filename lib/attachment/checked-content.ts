import { failed, type Result, succeeded } from "#lib/quantity";
import { contentKind, looksLike } from "./content-kind";
import { attachmentLimits } from "./limits";
import type { FileKind } from "./model";
import { checkedPdf } from "./pdf/checked-pdf";
import { checkedJpeg, checkedPng } from "./picture";
import type { AttachmentProblem } from "./problem";

const checks = { pdf: checkedPdf, png: checkedPng, jpeg: checkedJpeg } as const satisfies Record<FileKind, unknown>;

/** The kind of a file by what it holds, or why it is not kept. Nothing in it is run, drawn or followed. */
export function checkedContent(bytes: Uint8Array): Result<FileKind, AttachmentProblem> {
  if (bytes.length === 0) return failed({ kind: "empty" });
  if (bytes.length > attachmentLimits.fileBytes) return failed({ kind: "too-large", bytes: bytes.length });
  const kind = contentKind(bytes);
  if (kind === null) return failed({ kind: "unknown-kind", looksLike: looksLike(bytes) });
  const checked = checks[kind](bytes);
  return checked.ok ? succeeded(kind) : checked;
}
