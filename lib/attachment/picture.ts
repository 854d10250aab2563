import { failed, type Result, succeeded } from "#lib/quantity";
import { ascii, placeOf, startsWith, uint16, uint32 } from "./bytes";
import { attachmentLimits } from "./limits";
import type { AttachmentProblem } from "./problem";

type Checked = Result<null, AttachmentProblem>;

const sized = (width: number, height: number): Checked => {
  const { pixelsAlong, pixels } = attachmentLimits;
  const tooMany = Math.max(width, height) > pixelsAlong || width * height > pixels;
  return tooMany ? failed({ kind: "too-many-pixels", width, height }) : succeeded(null);
};

const chunkFrame = 12; // length, type and checksum of a chunk
const signatureBytes = 8;

/** Whether a PNG is a head, data and an end with nothing behind. @source W3C PNG 5.3, 11.2 */
export function checkedPng(bytes: Uint8Array): Checked {
  const broken = failed({ kind: "not-whole", what: "png" } as const);
  const isChunk = (type: string, at: number) => startsWith(bytes, ascii(type), at + 4);
  if (!isChunk("IHDR", signatureBytes) || uint32(bytes, signatureBytes) !== 13) return broken;
  const [width, height] = [uint32(bytes, signatureBytes + 8), uint32(bytes, signatureBytes + 12)];
  if (width === 0 || height === 0) return broken;
  let hasData = false;
  for (let at = signatureBytes; at + chunkFrame <= bytes.length; ) {
    const end = at + chunkFrame + uint32(bytes, at);
    if (end > bytes.length) return broken;
    hasData ||= isChunk("IDAT", at);
    if (isChunk("IEND", at)) {
      if (end !== bytes.length) return failed({ kind: "more-behind", bytes: bytes.length - end });
      return hasData ? sized(width, height) : broken;
    }
    at = end;
  }
  return broken;
}

/** Markers that carry the size of the picture: all starts of frame but DHT, JPG and DAC. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/**
 * Whether a JPEG has a frame, a scan and an end. What stands behind the end stays: telephones write a second picture or
 * a short film there, and nothing reads it as anything else.
 * @source ITU-T T.81 B.1, B.2
 */
export function checkedJpeg(bytes: Uint8Array): Checked {
  const broken = failed({ kind: "not-whole", what: "jpeg" } as const);
  let size: readonly [number, number] | null = null;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return broken;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1; // a marker may have any number of fill bytes in front
      continue;
    }
    const length = uint16(bytes, at + 2);
    if (length < 2 || at + 2 + length > bytes.length) return broken;
    if (isFrame(marker)) size = [uint16(bytes, at + 7), uint16(bytes, at + 5)];
    if (marker === 0xda) break;
    at += 2 + length;
  }
  const endsSomewhere = placeOf(bytes, Uint8Array.from([0xff, 0xd9]), at) !== -1;
  if (size === null || size[0] === 0 || size[1] === 0 || !endsSomewhere) return broken;
  return sized(size[0], size[1]);
}
