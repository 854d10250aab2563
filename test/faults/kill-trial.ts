import { existsSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Location } from "#lib/store";
import { type Cluster, postgresPrograms, startCluster } from "../store/postgres-cluster";
import { expectNothingLost } from "./figures";
import { type KillTrial, killRounds } from "./kill-rounds";
import { seed as newSeed, sqlitePlaces } from "./places";

/** How many rounds of each trial to run; 0 leaves it out. */
export type KillPlan = Readonly<{
  sqliteWriting: number;
  sqliteTwoWriting: number;
  sqliteOpening: number;
  sqliteClockShifted: number;
  postgresWriting: number;
  postgresTwoWriting: number;
  postgresOpening: number;
}>;

const patience = 60 * 60_000;

/** Debian's faketime; the dynamic linker loads it into a process and it answers for the clock. */
const clockLibrary = ["/usr/lib/x86_64-linux-gnu", "/usr/lib/aarch64-linux-gnu", "/usr/lib"]
  .map((folder) => `${folder}/faketime/libfaketime.so.1`)
  .find(existsSync);

export function killTrial(plan: KillPlan): void {
  const { seed, random } = newSeed();
  const programs = postgresPrograms();
  const newFolder = sqlitePlaces();
  let cluster: Cluster | null = null;
  const newDatabase = async (): Promise<Location> => ({
    kind: "postgres",
    url: (await cluster?.newDatabase()) ?? expect.fail("no PostgreSQL server"),
  });
  const wantsPostgres = plan.postgresWriting + plan.postgresTwoWriting + plan.postgresOpening > 0;

  beforeAll(async () => {
    if (programs === null)
      console.warn("NOT TESTED: killed writers over PostgreSQL. Its server is not installed here.");
    else if (wantsPostgres) cluster = await startCluster(programs);
    if (clockLibrary === undefined && plan.sqliteClockShifted > 0)
      console.warn("NOT TESTED: writers whose clocks differ by days. Debian's faketime is not installed here.");
  }, 120_000);
  afterAll(() => cluster?.stop(), 120_000);

  /** One trial; it is left out where something that it needs is not there. */
  const trial = (
    name: string,
    what: string,
    rounds: number,
    set: Pick<KillTrial, "newLocation" | "moment" | "companion" | "environment">,
    isThere = true,
  ) =>
    test.skipIf(rounds === 0 || !isThere)(name, { timeout: patience }, async () => {
      const figures = await killRounds({ rounds, random, ...set });
      const more = [
        ...(set.companion ? [`the other went on within ${Math.round(figures.slowestGoingOn)} ms`] : []),
        ...(set.moment === "opening" ? [`${figures.halfway} killed before the first write`] : []),
      ];
      expectNothingLost(what, seed, figures, ...more);
      if (set.moment === "writing") expect(figures.acknowledged).toBeGreaterThanOrEqual(rounds);
    });
  const there = programs !== null;

  describe("acknowledged writes outlive a killed process", () => {
    trial("that writes to SQLite", "SQLite, killed while writing", plan.sqliteWriting, {
      ...{ newLocation: newFolder, moment: "writing" },
    });
    trial("that writes to SQLite beside another", "SQLite, two processes writing, one killed", plan.sqliteTwoWriting, {
      newLocation: newFolder,
      moment: "writing",
      companion: true,
    });
    trial("that makes a new SQLite database", "SQLite, killed while opening a new database", plan.sqliteOpening, {
      ...{ newLocation: newFolder, moment: "opening" },
    });
    const days = [0, -3, 40, -1, 0.125, -400];
    trial(
      "whose clock is set back or forward by days from one round to the next",
      "SQLite, killed while writing under clocks that differ by days",
      plan.sqliteClockShifted,
      {
        ...{ newLocation: newFolder, moment: "writing" },
        environment: (round) => ({
          LD_PRELOAD: clockLibrary ?? "",
          FAKETIME: `${(days[round % days.length] ?? 0) * 86_400}`.replace(/^(?=\d)/, "+"), // seconds
          FAKETIME_DONT_FAKE_MONOTONIC: "1",
        }),
      },
      clockLibrary !== undefined,
    );
    trial(
      "that writes to PostgreSQL",
      "PostgreSQL, application killed while writing",
      plan.postgresWriting,
      { newLocation: newDatabase, moment: "writing" },
      there,
    );
    trial(
      "that writes to PostgreSQL beside another",
      "PostgreSQL, two applications writing to one project, one killed",
      plan.postgresTwoWriting,
      { newLocation: newDatabase, moment: "writing", companion: true },
      there,
    );
    trial(
      "that makes the tables of a new PostgreSQL database",
      "PostgreSQL, application killed while opening a new database",
      plan.postgresOpening,
      { newLocation: newDatabase, moment: "opening" },
      there,
    );
  });
}
