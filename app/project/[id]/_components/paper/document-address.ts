import { type AttachmentOwner, attachmentNamed, firstPage } from "#lib/attachment";
import type { KeptAttachment } from "#lib/evaluation";
import { viewAddress } from "../../../../_file-addresses";

/** Where papers are looked for: in a project, first among those of the given owners. */
export type Papers = Readonly<{
  project: string;
  attachments: readonly KeptAttachment[];
  owners: readonly AttachmentOwner[];
}>;

/** A document as somebody names it, with the page. */
export type Named = Readonly<{ document: string; page: string }>;

/** Where a named document opens, a PDF at its page; null where the project does not keep it. */
export function documentAddress({ project, attachments, owners }: Papers, { document, page }: Named): string | null {
  const found = attachmentNamed(attachments, document, owners);
  return found === null ? null : viewAddress(project, found.id, found.kind === "pdf" ? firstPage(page) : null);
}
