import { existsSync } from "node:fs";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Location } from "#lib/store";
import { type Cluster, postgresPrograms, startCluster } from "../store/postgres-cluster";
import { expectNothingLost, noFigures } from "./figures";
import { lookedUp, trialProject } from "./kill-rounds";
import { seed as newSeed } from "./places";
import { isSaved, startWriter, type WritingProcess } from "./writing-process";

const roundsTogether = 15;

/**
 * PostgreSQL is killed with all its processes while an application writes, and started again. The application is the same
 * process all the while and has to come back by itself.
 */
export function databaseKillTrial(rounds: number): void {
  const { seed, random } = newSeed();
  const programs = postgresPrograms();
  const isPossible = programs !== null && existsSync("/proc");
  if (!isPossible) console.warn("NOT TESTED: a killed PostgreSQL. It takes its server programs and Linux.");
  let cluster: Cluster;

  describe.skipIf(!isPossible)("acknowledged writes outlive a killed database server", () => {
    beforeAll(async () => {
      cluster = await startCluster(programs ?? "", { outlivesCrash: true });
    }, 120_000);
    afterAll(() => cluster?.stop(), 120_000);

    test("and the application comes back by itself", { timeout: 60 * 60_000 }, async () => {
      const figures = noFigures();
      let slowestRecovery = 0;
      let refused = 0;
      let place: Readonly<{ location: Location; writer: WritingProcess }> | null = null;
      for (let round = 1; round <= rounds; round += 1) {
        if (place === null || round % roundsTogether === 1) {
          await place?.writer.kill();
          const location: Location = { kind: "postgres", url: await cluster.newDatabase() };
          const project = await trialProject(location);
          place = { location, writer: await startWriter({ location, project, round: `from ${round}`, goesOn: true }) };
        }
        const { location, writer } = place;
        const from = round % roundsTogether === 1 ? 0 : writer.lines().length;
        await writer.next(isSaved);
        await pause(random() * 300);
        const killed = cluster.kill();
        // a leader, five of its own, and at least one that serves the application
        if (killed < 7) throw new Error(`only ${killed} processes of the server were killed`);
        figures.kills += 1;
        await pause(random() * 200);
        expect(cluster.revive()).toBe(true);
        const began = performance.now();
        await writer.next(isSaved);
        slowestRecovery = Math.max(slowestRecovery, performance.now() - began);
        const lines = writer.lines().slice(from);
        refused += lines.filter(({ kind }) => kind === "failed").length;
        figures.rounds += 1;
        await lookedUp(location, lines, `round ${round}`, figures);
      }
      await place?.writer.kill();
      expectNothingLost(
        ...(["PostgreSQL killed, application going on", seed, figures] as const),
        ...[`${refused} writes refused meanwhile`, `writing again ${Math.round(slowestRecovery)} ms after the start`],
      );
      expect(refused).toBeGreaterThan(0);
    });
  });
}
