import { type AttachmentProblem, attachmentLimits, contentKind } from "#lib/attachment";
import { failed, type Result, succeeded } from "#lib/quantity";

const enoughToKnow = 16; // bytes that tell the kind of a file

/**
 * The bytes of a request, read as they come. Reading stops where they are more than is kept or, after the first few, no
 * file of a kind that is kept: then what came so far is enough to say why.
 */
export async function received(
  body: ReadableStream<Uint8Array> | null,
): Promise<Result<Uint8Array, Extract<AttachmentProblem, { kind: "too-large" }>>> {
  if (body === null) return succeeded(new Uint8Array());
  const parts: Uint8Array[] = [];
  let bytes = 0;
  let isKnown = false;
  const reader = body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    parts.push(value);
    bytes += value.length;
    if (bytes > attachmentLimits.fileBytes) {
      await reader.cancel();
      return failed({ kind: "too-large", bytes });
    }
    if (isKnown || bytes < enoughToKnow) continue;
    if (contentKind(joined(parts, bytes)) === null) {
      await reader.cancel();
      break;
    }
    isKnown = true;
  }
  return succeeded(joined(parts, bytes));
}

function joined(parts: readonly Uint8Array[], bytes: number): Uint8Array {
  const [only] = parts;
  if (only !== undefined && parts.length === 1) return only;
  const whole = new Uint8Array(bytes);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
