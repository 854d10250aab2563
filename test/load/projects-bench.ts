// A store with many projects against one with few, side by side in one run: `npm run bench:projects`. Prints times and ratios.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { editorNamed } from "#lib/access";
import { backUp, type Location, openStore, restore } from "#lib/store";
import { seeded } from "../faults/seeded";
import { postgresPrograms, query, startCluster } from "../store/postgres-cluster";
import { bid, schemas, type TrialStore } from "../store/trial";
import { homePages } from "./home-pages";

const many = Number(process.env.PROJECTS ?? 10_000);
const few = 60; // a full page too
const rounds = 80;

const made = editorNamed("Bench");
if (!made.ok) throw new Error(made.problem.kind);
const editor = made.value;

const places = ["North", "South", "East", "West", "Upper", "Lower", "Old", "New", "River", "Hill"];
const fields = ["Field", "Stadium", "Park", "Ground", "Pitch"];
const owners = ["district", "town", "schools", "college", "parks"];
const pick = (from: readonly string[], index: number) => from[index % from.length] ?? "";

/** Projects with six documents and seven or more entries of the record each, made by the store itself. */
async function filled(location: Location, count: number): Promise<void> {
  const random = seeded(7);
  const store = await openStore(location, { schemas });
  for (let index = 0; index < count; index += 1) {
    const name = `${pick(places, index)} ${pick(fields, Math.floor(index / 10))} ${index}`;
    const owner = `Harrow Vale ${pick(owners, Math.floor(random() * 5))} ${index % 300}`;
    const outcome = await store.projects.create(
      {
        ...{ name, owner, origin: "own" },
        documents: [
          { kind: "brief", body: { name } },
          { kind: "requirements", body: { limit: "165" } },
          ...["a", "b", "c"].map((id) => ({ kind: "bid" as const, id, body: bid(id, "x".repeat(400)) })),
          { kind: "costing", body: { currency: "USD" } },
        ],
      },
      editor,
    );
    if (outcome.kind !== "saved") throw new Error(outcome.kind);
    if (index % 10 === 0)
      await store.documents.replace(
        { project: outcome.id, kind: "brief", id: "brief", version: 1 },
        { name: `${name}, again` },
        editor,
      );
  }
  await store.close();
}

/** Verifies the record of every so-and-so-manieth project; gives how many entries were looked at. */
async function verified(location: Location, step: number): Promise<number> {
  const store = await openStore(location, { schemas });
  let entries = 0;
  for (const [index, { id }] of (await store.projects.list()).entries()) {
    if (index % step !== 0) continue;
    const verdict = await store.record.verify(id);
    if (verdict?.kind !== "intact") throw new Error(JSON.stringify(verdict));
    entries += verdict.entries;
  }
  await store.close();
  return entries;
}

async function copied(from: Location, to: Location): Promise<void> {
  const lines: string[] = [];
  await backUp(from, async (line) => void lines.push(line.trimEnd()), "2026-11-25T10:00:00.000Z");
  const outcome = await restore(to, async function* () {
    yield* lines;
  });
  if (outcome.kind !== "restored") throw new Error(JSON.stringify(outcome));
}

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

type Work = (store: TrialStore, round: number) => Promise<unknown>;

/** A place halfway through the list, found by going there page by page. */
async function halfway(store: TrialStore): Promise<Work> {
  const all = await store.projects.list();
  const after = all[Math.floor(all.length / 2)];
  return (asked) => asked.projects.page({ limit: 50, ...(after ? { after } : {}) });
}

const works: Readonly<Record<string, Work>> = {
  "first page of the list": (store) => store.projects.page({ limit: 50 }),
  "search that finds many": (store) => store.projects.page({ search: "north field", limit: 50 }),
  "search that finds one": (store) => store.projects.page({ search: "stadium 10", limit: 50 }),
  "search that finds none": (store) => store.projects.page({ search: "nowhere", limit: 50 }),
};

async function measured(what: string, small: TrialStore, large: TrialStore): Promise<void> {
  const ids = async (store: TrialStore) => (await store.projects.list()).map(({ id }) => id);
  const [ofSmall, ofLarge] = [await ids(small), await ids(large)];
  const idOf = (store: TrialStore, round: number) => {
    const all = store === small ? ofSmall : ofLarge;
    return all[(round * 7919) % all.length] ?? "";
  };
  const [inSmall, inLarge] = [await halfway(small), await halfway(large)];
  const all: Readonly<Record<string, Work>> = {
    ...works,
    "page from the middle": (store, round) => (store === small ? inSmall : inLarge)(store, round),
    "open a project": (store, round) => store.projects.load(idOf(store, round)),
    "save a document": async (store, round) => {
      const place = { project: idOf(store, round), kind: "bid", id: "a" } as const;
      const version = (await store.documents.read(place))?.version ?? 0;
      const outcome = await store.documents.replace({ ...place, version }, bid("a", `round ${round}`), editor);
      if (outcome.kind !== "saved") throw new Error(outcome.kind);
    },
  };
  console.log(`\n${what}: ${many.toLocaleString("en-US")} projects against ${few}, medians of ${rounds} pairs`);
  for (const [name, work] of Object.entries(all)) {
    const times = { small: [] as number[], large: [] as number[] };
    for (let round = 0; round < rounds + 10; round += 1)
      for (const [size, store] of Object.entries({ small, large })) {
        const began = performance.now();
        await work(store, round);
        if (round >= 10) times[size as "small" | "large"].push(performance.now() - began);
      }
    const [one, other] = [median(times.small), median(times.large)];
    console.log(
      `  ${name.padEnd(26)} ${other.toFixed(2).padStart(7)} ms against ${one.toFixed(2).padStart(6)} ms, ratio ${(other / one).toFixed(2)}`,
    );
  }
}

const folder = await mkdtemp(join(tmpdir(), "evenfield-projects-"));
const sqlite = (name: string): Location => ({ kind: "sqlite", folder: join(folder, name) });
const began = performance.now();
await filled(sqlite("small"), few);
await filled(sqlite("large"), many);
const entries = await verified(sqlite("large"), 1);
console.log(
  `${many.toLocaleString("en-US")} projects with ${entries.toLocaleString("en-US")} entries of their records, made by the store and verified in ${Math.round((performance.now() - began) / 1000)} s`,
);

/** The store by itself, then the first page as the built app serves it. */
async function compared(what: string, small: Location, large: Location): Promise<void> {
  const [one, other] = [await openStore(small, { schemas }), await openStore(large, { schemas })];
  await measured(what, one, other);
  await one.close();
  await other.close();
  const [served, servedLarge] = await homePages(small, large, rounds);
  console.log(`  as the pages of the built app, in the same ${rounds} pairs`);
  for (const [name, time] of Object.entries(served ?? {})) {
    const large = servedLarge?.[name] ?? Number.NaN;
    console.log(
      `  ${name.padEnd(26)} ${large.toFixed(1).padStart(7)} ms against ${time.toFixed(1).padStart(6)} ms, ratio ${(large / time).toFixed(2)}`,
    );
  }
}

try {
  await compared("SQLite", sqlite("small"), sqlite("large"));
  const programs = postgresPrograms();
  if (programs === null) console.log("\nPostgreSQL was not measured: its server is not installed here.");
  else {
    const cluster = await startCluster(programs);
    try {
      const postgres = async (): Promise<Location> => ({ kind: "postgres", url: await cluster.newDatabase() });
      const [small, large] = [await postgres(), await postgres()];
      await copied(sqlite("small"), small);
      await copied(sqlite("large"), large);
      await verified(large, 20);
      // As the server does by itself a minute after so much was written.
      for (const place of [small, large]) if (place.kind === "postgres") await query(place.url, "vacuum analyze");
      await compared("PostgreSQL", small, large);
    } finally {
      cluster.stop();
    }
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
