import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Location } from "#lib/store";
import { type Cluster, postgresPrograms, startCluster } from "../store/postgres-cluster";
import { type KillFigures, killRounds } from "./kill-rounds";
import { seeded } from "./seeded";

/** How many rounds of each trial to run. `SEED` in the environment repeats a run. */
export type KillPlan = Readonly<{ sqliteWriting: number; sqliteOpening: number; postgresWriting: number }>;

const patience = 30 * 60_000;

export function killTrial({ sqliteWriting, sqliteOpening, postgresWriting }: KillPlan): void {
  const seed = Number(process.env.SEED ?? Date.now() % 2 ** 32);
  const random = seeded(seed);
  const programs = postgresPrograms();
  const folders: string[] = [];
  let cluster: Cluster | null = null;

  const newFolder = (): Location => {
    const folder = mkdtempSync(join(tmpdir(), "evenfield-kill-"));
    folders.push(folder);
    return { kind: "sqlite", folder };
  };
  const expectNothingLost = (what: string, rounds: number, { lost, brokenRecords, ...figures }: KillFigures) => {
    const { acknowledged, slowestReopening } = figures;
    console.log(
      `${what}, seed ${seed}: ${rounds} rounds, ${acknowledged} acknowledged writes, ${lost.length} lost, ` +
        `${brokenRecords.length} broken records, slowest reopening ${slowestReopening} ms`,
    );
    expect({ lost, brokenRecords }).toStrictEqual({ lost: [], brokenRecords: [] });
  };

  beforeAll(async () => {
    if (programs === null)
      console.warn("NOT TESTED: killed writers over PostgreSQL. Its server is not installed here.");
    else if (postgresWriting > 0) cluster = await startCluster(programs);
  }, 120_000);
  afterAll(() => {
    cluster?.stop();
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  }, 120_000);

  describe("acknowledged writes outlive a killed process", () => {
    test("that writes to SQLite", { timeout: patience }, async () => {
      const location = newFolder();
      const figures = await killRounds(sqliteWriting, "writing", random, async () => location);
      expectNothingLost("SQLite, killed while writing", sqliteWriting, figures);
      expect(figures.acknowledged).toBeGreaterThanOrEqual(sqliteWriting);
    });

    test("that makes a new SQLite database", { timeout: patience }, async () => {
      const figures = await killRounds(sqliteOpening, "opening", random, async () => newFolder());
      expectNothingLost("SQLite, killed while opening a new database", sqliteOpening, figures);
    });

    test.skipIf(programs === null || postgresWriting === 0)(
      "that writes to PostgreSQL",
      { timeout: patience },
      async () => {
        const url = (await cluster?.newDatabase()) ?? expect.fail("no PostgreSQL server");
        const figures = await killRounds(postgresWriting, "writing", random, async () => ({ kind: "postgres", url }));
        expectNothingLost("PostgreSQL, application killed while writing", postgresWriting, figures);
        expect(figures.acknowledged).toBeGreaterThanOrEqual(postgresWriting);
      },
    );
  });
}
