import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";
import type { Location } from "#lib/store";
import { seeded } from "./seeded";

/** Kills of the whole run, shared out among its trials. */
const wanted = Number(process.env.ROUNDS ?? 1000);

/** How many of a trial's rounds to run: as many as named of a run of a thousand, and no trial without one. */
export const share = (ofThousand: number): number => Math.max(1, Math.round((ofThousand * wanted) / 1000));

/** `SEED` in the environment repeats a run. */
export function seed(): Readonly<{ seed: number; random: () => number }> {
  const chosen = Number(process.env.SEED ?? Date.now() % 2 ** 32);
  return { seed: chosen, random: seeded(chosen) };
}

/** Makes empty folders for SQLite files, and takes them away after the tests of the file. */
export function sqlitePlaces(): () => Promise<Location> {
  const folders: string[] = [];
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });
  return async () => {
    const folder = mkdtempSync(join(tmpdir(), "evenfield-fault-"));
    folders.push(folder);
    return { kind: "sqlite", folder };
  };
}
