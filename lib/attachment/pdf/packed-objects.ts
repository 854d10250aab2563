import { Unzlib } from "fflate";
import { ascii, placeOf } from "../bytes";

const streamWord = ascii("stream");
const endOfObject = ascii("endobj");

/** Where the data of a stream begins that follows a place in its dictionary; null where the object ends before. */
function streamStart(bytes: Uint8Array, from: number): number | null {
  const at = placeOf(bytes, streamWord, from);
  const over = placeOf(bytes, endOfObject, from, at === -1 ? bytes.length : at);
  if (at === -1 || over !== -1) return null;
  const behind = at + streamWord.length;
  if (bytes[behind] === 0x0a) return behind + 1;
  return bytes[behind] === 0x0d && bytes[behind + 1] === 0x0a ? behind + 2 : null;
}

/** Whether data begins as zlib does. @source RFC 1950 section 2.2 */
const beginsAsZlib = (bytes: Uint8Array, at: number): boolean =>
  ((bytes[at] ?? 0) & 0x0f) === 8 && (((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)) % 31 === 0;

const step = 16 * 1024; // bytes handed over at once, so that a bomb is noticed early

/** Unpacks to the end that the data has by itself; null where it has none, or where more comes out than is allowed. */
function unpacked(bytes: Uint8Array, from: number, atMost: number): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const unzip = new Unzlib((part, final) => {
    parts.push(part);
    length += part.length;
    ended ||= final;
  });
  try {
    for (let at = from; at < bytes.length && !ended && length <= atMost; at += step)
      unzip.push(bytes.subarray(at, at + step), at + step >= bytes.length);
  } catch {
    return null; // no zlib after all
  }
  if (!ended || length > atMost) return null;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** An object stream begins with pairs of numbers: of an object and its place. @source ISO 32000-1 7.5.7 */
const beginsWithPairs = (objects: Uint8Array): boolean =>
  /^\s*\d+\s+\d+\s/.test(String.fromCharCode(...objects.subarray(0, 40)));

/**
 * The objects of a stream of objects, whose dictionary holds the name that ends at `from`. Null where they are not packed
 * plainly by Flate, as every usual program does, or unpack to more than is allowed.
 */
export function packedObjects(bytes: Uint8Array, from: number, atMost: number): Uint8Array | null {
  const start = streamStart(bytes, from);
  if (start === null || !beginsAsZlib(bytes, start)) return null;
  const objects = unpacked(bytes, start, atMost);
  return objects !== null && beginsWithPairs(objects) ? objects : null;
}
