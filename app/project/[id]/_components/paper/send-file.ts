import type { AttachmentOwner } from "#lib/attachment";
import { uploadAddress } from "../../../../_file-addresses";
import type { UploadOutcome } from "../../attachments/_files/upload-outcome";

/** Where a file goes and what it is called there. */
export type FileFor = Readonly<{ project: string; owner: AttachmentOwner; title: string }>;

function addressOf({ project, owner, title }: FileFor): string {
  const asked = new URLSearchParams(title === "" ? {} : { title });
  if (owner.kind === "bid") asked.set("bid", owner.bid);
  if (owner.kind === "submittal") asked.set("submittal", owner.submittal);
  if (owner.kind === "substitution") asked.set("substitution", owner.substitution);
  return `${uploadAddress(project)}?${asked}`;
}

const broken: UploadOutcome = {
  kind: "refused",
  problem: "The connection broke before the file had arrived, so nothing was kept. Send it again.",
};

/** What the server answered; a plain text where it refused before it looked at the file. */
function outcomeOf(answer: string, status: number): UploadOutcome {
  try {
    return JSON.parse(answer) as UploadOutcome; // our own route wrote it
  } catch {
    return status === 0 ? broken : { kind: "refused", problem: answer.trim() };
  }
}

/**
 * Sends one file and tells how much of it has gone. XMLHttpRequest, because fetch does not tell.
 * @param progress called with the share that has been sent, 0 to 1
 */
export function sendFile(
  file: File,
  where: FileFor,
  progress: (share: number) => void,
  cancel: AbortSignal,
): Promise<UploadOutcome> {
  return new Promise((done) => {
    const request = new XMLHttpRequest();
    request.open("POST", addressOf(where));
    request.setRequestHeader("content-type", "application/octet-stream");
    request.setRequestHeader("x-file-name", encodeURIComponent(file.name.replace(/\p{Cs}/gu, "")));
    request.upload.onprogress = ({ loaded, total }) => progress(total > 0 ? loaded / total : 0);
    request.onload = () => done(outcomeOf(request.responseText, request.status));
    request.onerror = () => done(broken);
    request.onabort = () => done({ kind: "refused", problem: "You stopped it, so nothing was kept." });
    cancel.addEventListener("abort", () => request.abort());
    request.send(file);
  });
}
