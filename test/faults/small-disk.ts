import { execFileSync } from "node:child_process";
import {
  chmodSync,
  closeSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  statfsSync,
  truncateSync,
  unlinkSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A small file system of the test's own, which can be filled up and emptied again. */
export type SmallDisk = Readonly<{
  /** What it is, in words. */
  kind: string;
  /** An empty folder on it. */
  newFolder: () => string;
  /** Takes up all room but so many bytes. */
  fillUpTo: (left: number) => void;
  /** Gives back the room that was taken up. */
  free: () => void;
  remove: () => void;
}>;

const mebibyte = 1024 * 1024;

/** Null where this account may not mount: ext4 in a file over a loop device, else a small part of memory. */
export function smallDisk(mebibytes: number): SmallDisk | null {
  const home = mkdtempSync(join(tmpdir(), "evenfield-disk-"));
  chmodSync(home, 0o711); // a server of another account has to come through
  const place = join(home, "mounted");
  mkdirSync(place);
  const kind = mounted(home, place, mebibytes);
  if (kind === null) {
    rmSync(home, { recursive: true, force: true });
    return null;
  }
  const ballast = join(place, "ballast");
  let made = 0;
  return {
    kind,
    newFolder() {
      made += 1;
      const folder = join(place, `folder-${made}`);
      mkdirSync(folder);
      return folder;
    },
    fillUpTo(left) {
      const file = openSync(ballast, "a");
      try {
        for (;;) {
          const { bavail, bsize } = statfsSync(place);
          const size = Math.min(bavail * bsize - left, mebibyte);
          if (size <= 0) break;
          writeSync(file, Buffer.alloc(size, 1));
        }
      } catch (problem) {
        if (!(problem instanceof Error) || !("code" in problem) || problem.code !== "ENOSPC") throw problem;
      } finally {
        closeSync(file);
      }
    },
    free() {
      unlinkSync(ballast);
    },
    remove() {
      if (!succeeds("umount", place)) throw new Error(`${place} could not be given up`);
      rmSync(home, { recursive: true, force: true });
    },
  };
}

function mounted(home: string, place: string, mebibytes: number): string | null {
  if (process.platform !== "linux" || process.getuid?.() !== 0) return null;
  const image = join(home, "image");
  closeSync(openSync(image, "w"));
  truncateSync(image, mebibytes * mebibyte);
  if (succeeds("mkfs.ext4", "-q", "-m", "0", image) && succeeds("mount", "-o", "loop", image, place))
    return `an ext4 file system of ${mebibytes} MB over a loop device`;
  if (succeeds("mount", "-t", "tmpfs", "-o", `size=${mebibytes}m`, "tmpfs", place))
    return `${mebibytes} MB of memory as a disk, as no loop device could be mounted`;
  return null;
}

function succeeds(program: string, ...options: readonly string[]): boolean {
  try {
    execFileSync(program, options, { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
