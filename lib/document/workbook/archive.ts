import { failed, type Result, succeeded } from "#lib/quantity";
import { limits } from "./limits";
import type { WorkbookProblem } from "./problem";

/** One part of a ZIP file as its central directory describes it. Sizes in bytes; the size is what the file says. */
export type ArchivePart = Readonly<{
  name: string;
  method: "stored" | "deflated";
  packed: Uint8Array;
  size: number;
  crc: number;
}>;

const signatures = { local: 0x04034b50, central: 0x02014b50, end: 0x06054b50 };
const endLength = 22;
const centralLength = 46;
const localLength = 30;
const longestComment = 0xffff;
const oldWorkbook = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]; // compound file: .xls and locked .xlsx

const damaged = (what: string) => failed({ kind: "damaged", what } as const);

/**
 * The parts of a ZIP file, packed. The central directory alone decides; parts that are named twice, that lie over each
 * other, that are locked or that say they unpack too far are refused before anything is unpacked.
 * @source PKWARE APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16
 */
export function archiveParts(bytes: Uint8Array): Result<readonly ArchivePart[], WorkbookProblem> {
  if (bytes.length === 0) return failed({ kind: "empty" });
  if (bytes.length > limits.fileBytes) return failed({ kind: "too-large", bytes: bytes.length });
  if (oldWorkbook.every((byte, at) => bytes[at] === byte)) return failed({ kind: "old-or-locked" });
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < endLength || view.getUint32(0, true) !== signatures.local)
    return failed({ kind: "not-a-workbook" });
  const end = endOf(view);
  if (end === null) return damaged("the list of its parts is missing at its end");
  const { count, start, length } = end;
  if (count > limits.parts) return failed({ kind: "too-many-parts", parts: count });
  if (start + length !== end.at) return damaged("the list of its parts is not where the file says");
  return listed(bytes, view, end);
}

type End = Readonly<{ at: number; count: number; start: number; length: number }>;

/** The record at the end of the file; null without one, or with one for several disks or for huge files. */
function endOf(view: DataView): End | null {
  const earliest = Math.max(0, view.byteLength - endLength - longestComment);
  for (let at = view.byteLength - endLength; at >= earliest; at -= 1) {
    if (view.getUint32(at, true) !== signatures.end) continue;
    if (at + endLength + view.getUint16(at + 20, true) !== view.byteLength) continue;
    const [disk, directoryDisk, here, count] = [4, 6, 8, 10].map((offset) => view.getUint16(at + offset, true));
    if (disk !== 0 || directoryDisk !== 0 || count === undefined || here !== count) return null;
    return { at, count, length: view.getUint32(at + 12, true), start: view.getUint32(at + 16, true) };
  }
  return null;
}

function listed(bytes: Uint8Array, view: DataView, end: End): Result<readonly ArchivePart[], WorkbookProblem> {
  const parts: ArchivePart[] = [];
  const names = new Set<string>();
  const taken: (readonly [from: number, to: number])[] = [];
  let at = end.start;
  let total = 0;
  for (let index = 0; index < end.count; index += 1) {
    if (at + centralLength > end.at || view.getUint32(at, true) !== signatures.central)
      return damaged("the list of its parts breaks off");
    const entry = centralEntry(bytes, view, at);
    if (entry.next > end.at) return damaged("the list of its parts breaks off");
    const { name, packedSize, size, flags, method } = entry;
    if ((flags & 0x2041) !== 0) return failed({ kind: "part-locked", part: name });
    if (method !== 0 && method !== 8) return damaged(`its part “${name}” is packed in a way that workbooks do not use`);
    const plain = name.toLowerCase();
    if (names.has(plain)) return damaged(`it holds two parts named “${name}”`);
    names.add(plain);
    total += size;
    const tooFar = size > limits.ratioFrom && size > packedSize * limits.ratio;
    if (total > limits.inflatedBytes || tooFar) return failed({ kind: "inflates-too-far", part: name, bytes: size });
    const data = dataOf(bytes, view, entry, end.start);
    if (data === null) return damaged(`its part “${name}” is not where the file says`);
    taken.push([entry.local, data.to]);
    parts.push({
      name,
      method: method === 0 ? "stored" : "deflated",
      packed: bytes.subarray(data.from, data.to),
      size,
      crc: entry.crc,
    });
    at = entry.next;
  }
  if (at !== end.at) return damaged("the list of its parts does not end where the file says");
  const inOrder = taken.toSorted(([one], [other]) => one - other);
  if (inOrder.some(([, to], index) => to > (inOrder[index + 1]?.[0] ?? end.start)))
    return damaged("two of its parts lie over each other");
  return succeeded(parts);
}

type CentralEntry = Readonly<{
  name: string;
  rawName: Uint8Array;
  flags: number;
  method: number;
  crc: number;
  packedSize: number;
  size: number;
  local: number;
  next: number;
}>;

function centralEntry(bytes: Uint8Array, view: DataView, at: number): CentralEntry {
  const [nameLength = 0, extraLength = 0, commentLength = 0] = [28, 30, 32].map((offset) =>
    view.getUint16(at + offset, true),
  );
  const rawName = bytes.subarray(at + centralLength, at + centralLength + nameLength);
  return {
    name: new TextDecoder().decode(rawName),
    rawName,
    flags: view.getUint16(at + 8, true),
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    packedSize: view.getUint32(at + 20, true),
    size: view.getUint32(at + 24, true),
    local: view.getUint32(at + 42, true),
    next: at + centralLength + nameLength + extraLength + commentLength,
  };
}

/** Where the packed bytes of a part stand; null if they are not inside the file or carry another name there. */
function dataOf(
  bytes: Uint8Array,
  view: DataView,
  { local, rawName, packedSize, size, method }: CentralEntry,
  limit: number,
): Readonly<{ from: number; to: number }> | null {
  if (local + localLength > limit || view.getUint32(local, true) !== signatures.local) return null;
  const nameLength = view.getUint16(local + 26, true);
  const nameFrom = local + localLength;
  const from = nameFrom + nameLength + view.getUint16(local + 28, true);
  const to = from + packedSize;
  if (nameLength !== rawName.length || to > limit || (method === 0 && packedSize !== size)) return null;
  return rawName.every((byte, index) => bytes[nameFrom + index] === byte) ? { from, to } : null;
}
