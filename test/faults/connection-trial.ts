import { setTimeout as pause } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Location } from "#lib/store";
import { type Cluster, postgresPrograms, startCluster } from "../store/postgres-cluster";
import { open } from "../store/trial";
import type { Failed } from "./acknowledgement";
import { expectNothingLost, noFigures } from "./figures";
import { lookedUp, trialProject } from "./kill-rounds";
import { writtenWords } from "./missing-writes";
import { seed as newSeed } from "./places";
import { type DatabaseProxy, type Fault, startProxy } from "./proxy";
import { isSaved, startWriter, type WritingProcess } from "./writing-process";

const roundsTogether = 20;

/** How long the application may take to say that nobody answers, beyond the time it was told to wait. */
const grace = 3000;

export type ConnectionPlan = Readonly<{
  cuts: number;
  silences: number;
  /** Rounds of silence that wait as long as an application does that was told nothing: half a minute each. */
  longSilences: number;
}>;

/** The connection between an application and PostgreSQL breaks, or falls silent. The application goes on as one process. */
export function connectionTrial({ cuts, silences, longSilences }: ConnectionPlan): void {
  const { seed, random } = newSeed();
  const programs = postgresPrograms();
  if (programs === null) console.warn("NOT TESTED: connections that break. PostgreSQL’s server is not installed here.");
  let cluster: Cluster;
  let proxy: DatabaseProxy;

  /** Lets an application write through the proxy while faults strike; gives what it was refused in each round. */
  const faultRounds = async (
    what: string,
    rounds: number,
    parameters: string,
    struck: (round: number, writer: WritingProcess) => Promise<void>,
    told: (round: number, refused: readonly Failed[], words: ReadonlyMap<string, string>) => void,
  ) => {
    const figures = noFigures();
    let place: Readonly<{ direct: Location; project: string; writer: WritingProcess }> | null = null;
    for (let round = 1; round <= rounds; round += 1) {
      if (place === null || round % roundsTogether === 1) {
        await place?.writer.kill();
        const url = await cluster.newDatabase();
        const direct = { kind: "postgres", url } as const;
        const project = await trialProject(direct);
        const location = { kind: "postgres", url: url.replace(/:\d+\//, `:${proxy.port}/`) + parameters } as const;
        const writer = await startWriter({ location, project, round: `from ${round}`, goesOn: true });
        await writer.next(isSaved);
        place = { direct, project, writer };
      }
      const { direct, project, writer } = place;
      const from = round % roundsTogether === 1 ? 0 : writer.lines().length;
      await pause(random() * 150);
      await struck(round, writer);
      await writer.next(isSaved);
      const lines = writer.lines().slice(from);
      figures.rounds += 1;
      await lookedUp(direct, lines, `round ${round}`, figures);
      const store = await open(direct);
      const refused = lines.filter((line) => line.kind === "failed");
      told(round, refused, await writtenWords(store, project));
      await store.close();
    }
    await place?.writer.kill();
    return (...more: readonly string[]) => expectNothingLost(what, seed, figures, ...more);
  };

  describe.skipIf(programs === null)("acknowledged writes outlive a connection", { timeout: 60 * 60_000 }, () => {
    beforeAll(async () => {
      cluster = await startCluster(programs ?? "");
      proxy = await startProxy(cluster.port);
    }, 120_000);
    afterAll(() => {
      proxy?.stop();
      cluster?.stop();
    }, 120_000);

    test.skipIf(cuts === 0)("that is cut at any moment, also between a commit and its answer", async () => {
      const kinds: readonly Fault[] = ["cut", "answer-lost", "commit-lost"];
      const kindOf = (round: number): Fault => kinds[round % kinds.length] ?? "cut";
      const counts = { refused: 0, keptUnanswered: 0, lostUnanswered: 0, keptUnsent: 0 };
      const conclude = await faultRounds(
        "PostgreSQL, connection cut",
        cuts,
        "",
        (round) => proxy.strike(kindOf(round)),
        (round, refused, words) => {
          const isThere = new Set(words.values());
          counts.refused += refused.length;
          const changes = refused.filter(({ words: tried }) => tried !== "");
          if (kindOf(round) === "answer-lost")
            for (const { words: tried } of changes)
              counts[isThere.has(tried) ? "keptUnanswered" : "lostUnanswered"] += 1;
          if (kindOf(round) === "commit-lost")
            counts.keptUnsent += changes.filter(({ words: tried }) => isThere.has(tried)).length;
        },
      );
      const { refused, keptUnanswered, lostUnanswered, keptUnsent } = counts;
      conclude(
        `${refused} writes refused`,
        `commit sent and not answered: ${keptUnanswered} there, ${lostUnanswered} not there`,
        `commit never sent: ${keptUnsent} there`,
      );
      expect({ lostUnanswered, keptUnsent }).toStrictEqual({ lostUnanswered: 0, keptUnsent: 0 });
      expect(refused).toBeGreaterThan(0);
    });

    const silent = async (rounds: number, what: string, parameters: string, wait: number) => {
      let slowest = 0;
      const conclude = await faultRounds(
        what,
        rounds,
        parameters,
        async (_round, writer) => {
          const began = performance.now();
          await proxy.strike("silence");
          const failed = await writer.next(({ kind }) => kind === "failed", wait + 2 * grace);
          const took = performance.now() - began;
          slowest = Math.max(slowest, took);
          expect(failed, "an error within the time").toMatchObject({ kind: "failed" });
          expect(took).toBeLessThan(wait + grace);
          proxy.heal();
        },
        () => undefined,
      );
      conclude(`slowest error ${Math.round(slowest)} ms after the last word, of ${wait} allowed`);
    };
    test.skipIf(silences === 0)("that falls silent: an error comes within the time allowed", () =>
      silent(silences, "PostgreSQL silent, two seconds allowed", "?query_timeout=2000", 2000),
    );
    test.skipIf(longSilences === 0)("that falls silent: within 35 seconds where nothing else was asked for", () =>
      silent(longSilences, "PostgreSQL silent, time allowed by default", "", 35_000),
    );

    test("whose holder fell silent with a project locked: another application gets the lock", async () => {
      const url = await cluster.newDatabase();
      const direct = { kind: "postgres", url } as const;
      const project = await trialProject(direct);
      const location = {
        kind: "postgres",
        url: `${url.replace(/:\d+\//, `:${proxy.port}/`)}?idle_in_transaction_session_timeout=1000&query_timeout=3000`,
      } as const;
      const silentOne = await startWriter({ location, project, round: "silent", goesOn: true });
      const other = await startWriter({ location: direct, project, round: "other", goesOn: false });
      await Promise.all([silentOne.next(isSaved), other.next(isSaved)]);
      const figures = noFigures();
      for (let round = 1; round <= 3; round += 1) {
        await pause(random() * 100);
        await proxy.strike("silence");
        await other.next(isSaved, 5000);
        for (let more = 0; more < 5; more += 1) await other.next(isSaved, 5000);
        await silentOne.next(({ kind }) => kind === "failed", 6000);
        proxy.heal();
        await silentOne.next(isSaved);
        figures.rounds += 1;
      }
      await Promise.all([silentOne.kill(), other.kill()]);
      await lookedUp(direct, [...silentOne.lines(), ...other.lines()], "both", figures);
      expectNothingLost("PostgreSQL, one of two applications silent", seed, figures);
    });
  });
}
