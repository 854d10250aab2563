import { chmodSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Location } from "#lib/store";
import { type Cluster, postgresPrograms, startCluster } from "../store/postgres-cluster";
import { open } from "../store/trial";
import { expectNothingLost, type Figures, noFigures } from "./figures";
import { lookedUp, trialProject } from "./kill-rounds";
import { seed as newSeed } from "./places";
import { type SmallDisk, smallDisk } from "./small-disk";
import { isSaved, startWriter } from "./writing-process";

/** How often the disk runs full; 0 leaves a trial out. */
export type FullDiskPlan = Readonly<{ sqlite: number; postgres: number }>;

/** The disk runs full while an application writes, and is freed again. The application is the same process all the while. */
export function fullDiskTrial({ sqlite, postgres }: FullDiskPlan): void {
  const { seed, random } = newSeed();
  const programs = postgresPrograms();
  const disks: SmallDisk[] = [];
  const probe = smallDisk(16);
  probe?.remove();
  if (probe === null) console.warn("NOT TESTED: a full disk. It takes root and the right to mount.");
  const diskOf = (mebibytes: number): SmallDisk => {
    const disk = smallDisk(mebibytes) ?? expect.fail("no disk");
    disks.push(disk);
    return disk;
  };
  let cluster: Cluster | null = null;
  afterAll(() => {
    try {
      cluster?.stop();
    } finally {
      for (const disk of disks) disk.remove();
    }
  }, 120_000);

  /** What was refused is counted by the first words of its message. */
  const rounds = async (
    disk: SmallDisk,
    wanted: number,
    location: Location,
    whileFull: () => Promise<void>,
    whenFreed: () => void,
  ): Promise<Readonly<{ figures: Figures; messages: ReadonlyMap<string, number>; slowest: number }>> => {
    const figures = noFigures();
    const messages = new Map<string, number>();
    let slowest = 0;
    const project = await trialProject(location);
    const writer = await startWriter({ location, project, round: "full disk", goesOn: true });
    for (let round = 1; round <= wanted; round += 1) {
      const from = round === 1 ? 0 : writer.lines().length;
      await writer.next(isSaved);
      disk.fillUpTo(Math.floor(random() * 300_000));
      await writer.next(({ kind }) => kind === "failed", 60_000);
      await whileFull();
      disk.free();
      const freed = performance.now();
      whenFreed();
      const looking = setInterval(whenFreed, 500); // a server that gives up does so after a while
      await writer.next(isSaved).finally(() => clearInterval(looking));
      slowest = Math.max(slowest, performance.now() - freed);
      const lines = writer.lines().slice(from);
      for (const line of lines) {
        if (line.kind !== "failed") continue;
        const said = `${line.name}: ${line.message.split(/[,.(]/)[0]}`.replace(/\d+/g, "…").replace(/"[^"]*"/g, "“…”");
        messages.set(said, (messages.get(said) ?? 0) + 1);
      }
      figures.rounds += 1;
      await lookedUp(location, lines, `round ${round}`, figures);
    }
    await writer.kill();
    return { figures, messages, slowest };
  };
  const counted = (messages: ReadonlyMap<string, number>) =>
    [...messages].map(([said, times]) => `“${said}” ${times} times`).join(" and ");

  describe.skipIf(probe === null)("acknowledged writes outlive a full disk", { timeout: 60 * 60_000 }, () => {
    test.skipIf(sqlite === 0)("with SQLite on it, which can be read meanwhile and written to afterwards", async () => {
      let reads = 0;
      const figuresOf = async (wanted: number) => {
        const disk = diskOf(24);
        const location: Location = { kind: "sqlite", folder: disk.newFolder() };
        const reader = await open(location);
        const read = async () => {
          const [project] = await reader.projects.list();
          expect(project && (await reader.projects.load(project.id))?.documents.bid).toHaveLength(3);
          reads += 1;
        };
        const done = await rounds(disk, wanted, location, read, () => undefined);
        await reader.close();
        return { ...done, disk };
      };
      const total = noFigures();
      const messages = new Map<string, number>();
      let slowest = 0;
      let kind = "";
      // Each few rounds a new disk, as what is written stays there.
      for (let left = sqlite; left > 0; left -= 4) {
        const done = await figuresOf(Math.min(left, 4));
        total.rounds += done.figures.rounds;
        total.acknowledged += done.figures.acknowledged;
        total.lost.push(...done.figures.lost);
        total.brokenRecords.push(...done.figures.brokenRecords);
        total.slowestReopening = Math.max(total.slowestReopening, done.figures.slowestReopening);
        for (const [said, times] of done.messages) messages.set(said, (messages.get(said) ?? 0) + times);
        slowest = Math.max(slowest, done.slowest);
        kind = done.disk.kind;
      }
      expectNothingLost(
        ...([`SQLite, disk full (${kind})`, seed, total] as const),
        ...[`refused with ${counted(messages)}`, `${reads} times read while full`],
        `writing again ${Math.round(slowest)} ms after there was room`,
      );
      expect([...messages.keys()]).toStrictEqual(["StoreFull: The disk that holds the data is full"]);
    });

    describe.skipIf(programs === null || postgres === 0)("with PostgreSQL’s data on it", () => {
      let disk: SmallDisk;
      beforeAll(async () => {
        disk = diskOf(256); // what the rounds write stays there
        const home = disk.newFolder();
        chmodSync(home, 0o755);
        cluster = await startCluster(programs ?? "", { outlivesCrash: true, home });
      }, 120_000);

      test("which stops at worst and goes on when it is started again", async () => {
        const url = (await cluster?.newDatabase()) ?? "";
        let stops = 0;
        const { figures, messages, slowest } = await rounds(
          ...([disk, postgres, { kind: "postgres", url }, async () => undefined] as const),
          () => {
            if (cluster?.revive()) stops += 1;
          },
        );
        expectNothingLost(
          ...([`PostgreSQL, disk full (${disk.kind})`, seed, figures] as const),
          ...[`refused with ${counted(messages)}`, `the server had stopped itself ${stops} times`],
          `writing again ${Math.round(slowest)} ms after there was room and a server`,
        );
      });
    });
  });
}
