import { Inflate } from "fflate";
import { failed, type Result, succeeded } from "#lib/quantity";
import type { ArchivePart } from "./archive";
import { crc32 } from "./crc32";
import type { WorkbookProblem } from "./problem";

/** Packed bytes handed over at a time: they unpack to at most a thousandfold, so this bounds what a false size costs. */
const stride = 4096;

/** A part unpacked, its size and checksum as the file says. What unpacks further than it says is given up at once. */
export function inflatedPart(part: ArchivePart): Result<Uint8Array, WorkbookProblem> {
  const bytes = part.method === "stored" ? part.packed : inflated(part);
  if (bytes === "too-far") return failed({ kind: "inflates-too-far", part: part.name, bytes: part.size });
  return bytes !== "unreadable" && bytes.length === part.size && crc32(bytes) === part.crc
    ? succeeded(bytes)
    : failed({ kind: "damaged", what: `its part “${part.name}” does not hold what its checksum says` });
}

function inflated({ packed, size }: ArchivePart): Uint8Array | "too-far" | "unreadable" {
  const whole = new Uint8Array(size);
  let filled = 0;
  let tooFar = false;
  const inflate = new Inflate((chunk) => {
    tooFar ||= filled + chunk.length > size;
    if (tooFar) return;
    whole.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length && !tooFar; at += stride)
      inflate.push(packed.subarray(at, at + stride), at + stride >= packed.length);
  } catch {
    return "unreadable"; // the library throws for what is no deflated data
  }
  return tooFar ? "too-far" : whole.subarray(0, filled);
}
