import { ascii, startsWith } from "./bytes";
import type { FileKind } from "./model";

const pngSignature = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const jpegStart = Uint8Array.from([0xff, 0xd8, 0xff]);

/** Signatures of what is kept. @source ISO 32000-1 7.5.2; W3C PNG 5.2; ITU-T T.81 B.1.1.3 */
const kept: readonly Readonly<{ kind: FileKind; signature: Uint8Array }>[] = [
  { kind: "pdf", signature: ascii("%PDF-") },
  { kind: "png", signature: pngSignature },
  { kind: "jpeg", signature: jpegStart },
];

/** What people send by mistake or with bad intent, so that the answer can name it. From memory. */
const others: readonly Readonly<{ is: string; signature: Uint8Array; at?: number }>[] = [
  { is: "a ZIP archive or an Office document", signature: ascii("PK\x03\x04") },
  { is: "a program for Windows", signature: ascii("MZ") },
  { is: "a program for Linux", signature: ascii("\x7fELF") },
  { is: "a script", signature: ascii("#!") },
  { is: "an older Office document", signature: Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0]) },
  { is: "a GIF picture", signature: ascii("GIF8") },
  { is: "a TIFF picture", signature: ascii("II*\0") },
  { is: "a TIFF picture", signature: ascii("MM\0*") },
  { is: "a WebP picture", signature: ascii("WEBP"), at: 8 },
  { is: "an HEIC picture or a film", signature: ascii("ftyp"), at: 4 },
  { is: "rich text", signature: ascii("{\\rtf") },
];

/** The kind of a file by its first bytes; null for what is not kept. The name and what a browser says do not count. */
export const contentKind = (bytes: Uint8Array): FileKind | null =>
  kept.find(({ signature }) => startsWith(bytes, signature))?.kind ?? null;

/** What a file that is not kept looks like; null where nothing is known of it. */
export function looksLike(bytes: Uint8Array): string | null {
  const known = others.find(({ signature, at = 0 }) => startsWith(bytes, signature, at))?.is;
  if (known !== undefined) return known;
  const head = new TextDecoder("utf-8").decode(bytes.subarray(0, 300)).trimStart().toLowerCase();
  return head.startsWith("<") ? "a page of the web, SVG or other XML" : null;
}
