import { setTimeout as pause } from "node:timers/promises";
import type { Location } from "#lib/store";
import { ada, bid, open } from "../store/trial";
import { type Acknowledgement, isWritten } from "./acknowledgement";
import { type Figures, noFigures } from "./figures";
import { brokenParts, missingWrites } from "./missing-writes";
import { isSaved, startWriter } from "./writing-process";

export type KillTrial = Readonly<{
  rounds: number;
  random: () => number;
  /** A new, empty database. */
  newLocation: () => Promise<Location>;
  /**
   * Where in a writer's life it is killed: while it makes or opens the database, each round a new one, or while it writes.
   */
  moment: "opening" | "writing";
  /** A second process writes to the same project meanwhile, and has to go on when the first is killed. */
  companion?: boolean;
  environment?: (round: number) => Readonly<Record<string, string>>;
}>;

/** Rounds that share a database. With each it grows, and so does the time that verifying it takes. */
const roundsTogether = 20;

/** A database with one project in it. */
export async function trialProject(location: Location): Promise<string> {
  const store = await open(location);
  const documents = ["one", "two", "three"].map((id) => ({ kind: "bid" as const, id, body: bid("Bidder") }));
  const made = await store.projects.create({ name: "Trial", owner: "Nobody", origin: "own", documents }, ada);
  await store.close();
  if (made.kind !== "saved") throw new Error(made.kind);
  return made.id;
}

/**
 * Kills a writing process again and again, each time reopens the database and looks up every write that was
 * acknowledged in that round, by version in the record and, for the last of each document, in the document.
 */
export async function killRounds(trial: KillTrial): Promise<Figures & { slowestGoingOn: number; halfway: number }> {
  const figures = { ...noFigures(), slowestGoingOn: 0, halfway: 0 };
  let place: Readonly<{ location: Location; project?: string }> | null = null;
  for (let round = 1; round <= trial.rounds; round++) {
    if (place === null || trial.moment === "opening" || round % roundsTogether === 1) {
      const location = await trial.newLocation();
      place = trial.moment === "opening" ? { location } : { location, project: await trialProject(location) };
    }
    const { lines, goingOn } = await killedWriter(trial, place, round);
    figures.rounds += 1;
    figures.kills += 1;
    figures.slowestGoingOn = Math.max(figures.slowestGoingOn, goingOn);
    if (!lines.some(isWritten)) figures.halfway += 1;
    await lookedUp(place.location, lines, `round ${round}`, figures);
  }
  return figures;
}

/** Reopens a database and looks for what was acknowledged in a round and at all that is recorded. */
export async function lookedUp(
  location: Location,
  lines: readonly Acknowledgement[],
  round: string,
  figures: Figures,
): Promise<void> {
  const began = performance.now();
  const store = await open(location);
  figures.slowestReopening = Math.max(figures.slowestReopening, performance.now() - began);
  try {
    for (const { id } of await store.projects.list())
      figures.brokenRecords.push(...(await brokenParts(store, id)).map((what) => `${round}: ${what}`));
    const writes = lines.filter(isWritten);
    figures.acknowledged += writes.length;
    figures.lost.push(...(await missingWrites(store, writes)).map((what) => `${round}: ${what}`));
  } finally {
    await store.close();
  }
}

/** What writers acknowledged in a round in which the first of them was killed. */
async function killedWriter(
  { moment, companion = false, random, environment }: KillTrial,
  { location, project }: Readonly<{ location: Location; project?: string }>,
  round: number,
): Promise<Readonly<{ lines: readonly Acknowledgement[]; goingOn: number }>> {
  const task = (name: string) => ({
    ...{ location, round: `round ${round}${name}`, goesOn: false },
    ...(project === undefined ? {} : { project }),
  });
  const starting = [startWriter(task(""), environment?.(round))];
  if (companion) starting.push(startWriter(task(", the other"), environment?.(round)));
  const [victim, other] = await Promise.all(starting);
  if (victim === undefined) throw new Error("no writer was started");
  const begun = (line: Acknowledgement) => (moment === "opening" ? line.kind === "started" : isSaved(line));
  await Promise.all([victim.next(begun), other?.next(begun)]);
  await pause(random() * 250);
  await victim.kill();
  const killed = performance.now();
  for (let more = 0; other && more < 3; more += 1) await other.next(isSaved);
  const goingOn = performance.now() - killed;
  await other?.kill();
  return { lines: [...victim.lines(), ...(other?.lines() ?? [])], goingOn: other ? goingOn : 0 };
}
