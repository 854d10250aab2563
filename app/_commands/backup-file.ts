import { createReadStream, createWriteStream, existsSync } from "node:fs";
import { open, rename, rm } from "node:fs/promises";
import { createInterface } from "node:readline";
import { pipeline } from "node:stream/promises";
import { createGunzip, createGzip } from "node:zlib";
import { type BackupCount, backUp, type Location } from "#lib/store";

/** The lines of a backup, unpacked as they are asked for. */
export async function* linesOf(path: string): AsyncGenerator<string> {
  const unpacked = createGunzip();
  const packed = createReadStream(path);
  packed.on("error", (problem) => unpacked.destroy(problem)).pipe(unpacked);
  try {
    yield* createInterface({ input: unpacked, crlfDelay: Number.POSITIVE_INFINITY });
  } finally {
    packed.destroy();
    unpacked.destroy();
  }
}

/** What is the matter with a file of a backup, in words; the problem's own where it is another. */
export function explainFileProblem(problem: unknown, path: string): string {
  const code = problem instanceof Error && "code" in problem ? problem.code : null;
  switch (code) {
    case "ENOENT":
      return `${path} can’t be opened: there is no such file or folder.`;
    case "Z_DATA_ERROR":
      return `${path} is no compressed file, or it is damaged. A backup is compressed by gzip.`;
    case "Z_BUF_ERROR":
      return `${path} is cut off.`;
    default:
      return problem instanceof Error ? problem.message : String(problem);
  }
}

/**
 * Writes a backup beside its place and moves it there once it is whole and on the disk.
 * @throws Error where a file stands there already: an earlier backup is never overwritten
 */
export async function writeBackup(location: Location, path: string): Promise<BackupCount> {
  if (existsSync(path)) throw new Error(`${path} exists already. Name a new file.`);
  const partial = `${path}.partial`;
  const packed = createGzip();
  const written = pipeline(packed, createWriteStream(partial, { mode: 0o600 }));
  try {
    const write = (line: string) =>
      new Promise<void>((done, fail) => packed.write(line, (problem) => (problem ? fail(problem) : done())));
    const counts = await Promise.race([
      backUp(location, write, new Date().toISOString()),
      written.then((): never => {
        throw new Error(`${partial} was closed before the backup was whole.`);
      }),
    ]);
    packed.end();
    await written;
    const file = await open(partial, "r+");
    await file.sync();
    await file.close();
    await rename(partial, path);
    return counts;
  } catch (problem) {
    packed.destroy();
    await written.catch(() => undefined);
    await rm(partial, { force: true });
    throw problem;
  }
}
