// Two instances of the built app on one PostgreSQL, with people who write and people who read: `npm run load:people`.
// Prints times, and ratios to a page with nothing on it; ends with 1 where a save was lost or anything failed.
import { signedInEditor } from "#lib/access";
import { documentSchemas, projectRules } from "#lib/evaluation";
import { firstOrganisation, newToken, openPeople, openStore, tokenHash } from "#lib/store";
import { ratedToStore } from "../evaluation/procedure/rated-project";
import { seeded } from "../faults/seeded";
import { administrator, member } from "../journeys/shared";
import { postgresPrograms, startCluster } from "../store/postgres-cluster";
import { type Askings, asked, noAskings, quantile } from "./askings";
import { type Acknowledged, type Crowd, letWork, pauses, throughput } from "./crowd";
import { secret, twoInstances } from "./two-instances";

const seconds = Number(process.env.SECONDS ?? 300);
const [howManyEditors, howManyReaders, howManyProjects] = [20, 200, 5];

const programs = postgresPrograms();
if (programs === null) throw new Error("PostgreSQL is not installed here; this needs its server.");
const cluster = await startCluster(programs, { outlivesCrash: true });
const url = await cluster.newDatabase();
const location = { kind: "postgres", url } as const;
const instances = await twoInstances(url);
const people = await openPeople(location, { secret, address: instances.addresses[0] });
const store = await openStore(location, { schemas: documentSchemas, guard: projectRules });

async function crowd(): Promise<Crowd> {
  const owner = await administrator(people);
  const several = async (count: number, what: string) => {
    const made = [];
    for (let index = 0; index < count; index += 1)
      made.push(await member(people, firstOrganisation, `${what} ${index}`, owner.id));
    return made;
  };
  const editors = await several(howManyEditors, "Editor");
  const accounts = await several(20, "Reader");
  const listed = [
    ...editors.map(({ id, name }) => ({ id, name, position: "", roles: ["administrator"] as const })),
    ...accounts.map(({ id, name }) => ({ id, name, position: "", roles: ["reader"] as const })),
  ];
  const token = newToken();
  const parts = ["side-by-side", "infill", "hardness", "cost", "evaluation", "recommendation"] as const;
  const release = { label: "load", endsAt: "2099-01-01T00:00:00.000Z", takenBackAt: null, tokenHash: tokenHash(token) };
  const projects = [];
  for (let index = 0; index < howManyProjects; index += 1) {
    const made = await store.projects.import(
      {
        ...ratedToStore,
        documents: [
          ...ratedToStore.documents.filter(({ kind }) => kind !== "people"),
          { kind: "people", body: { people: listed.map((one) => ({ ...one, roles: [...one.roles] })) } },
          { kind: "release", id: "load", body: { ...release, parts: [...parts] } },
        ],
      },
      signedInEditor(owner, [firstOrganisation]),
    );
    if (made.kind !== "saved") throw new Error(made.kind);
    projects.push(made.id);
  }
  const byAccount = Array.from({ length: howManyReaders / 2 }, (_, index) => accounts[index % accounts.length]?.cookie);
  return {
    ...{ addresses: instances.addresses, projects, editors },
    bids: ["bid-a", "bid-b", "bid-c", "bid-d"],
    readers: [
      ...byAccount.map((cookie) => () => cookie ?? ""),
      ...byAccount.map(() => (project: string) => `evenfield-released=${project}.load.${token}`),
    ],
    async read(place) {
      const held = await store.documents.read(place);
      if (held === null) throw new Error(`no ${place.kind}`);
      const field = place.kind === "brief" ? "purpose" : "system";
      const body = held.body as Readonly<Record<string, unknown>>;
      return { version: held.version, body, field, text: String(body[field]) };
    },
  };
}

/** What is wrong with what was kept: each acknowledged save stands in the record once, and its mark in the last text. */
async function missing(acknowledged: readonly Acknowledged[], all: Crowd): Promise<readonly string[]> {
  const wrong: string[] = [];
  for (const project of all.projects) {
    const verdict = await store.record.verify(project);
    if (verdict?.kind !== "intact") wrong.push(`the record of ${project}: ${JSON.stringify(verdict)}`);
    const entries = await store.record.list(project);
    for (const save of acknowledged.filter((one) => one.project === project)) {
      const { kind, id, version, mark } = save;
      const made = entries.filter(
        (entry) =>
          entry.kind === kind && entry.id === id && (entry.after as { version?: number } | null)?.version === version,
      );
      if (made.length !== 1 || !marksIn(JSON.stringify(made[0]?.after)).includes(mark))
        wrong.push(`${mark} in version ${version} of ${kind} ${id}: ${made.length} entries`);
      const { text } = await all.read(save);
      if (marksIn(text).filter((one) => one === mark).length !== 1)
        wrong.push(`${mark} in the last text of ${kind} ${id}`);
    }
  }
  return wrong;
}

const marksIn = (text = ""): readonly string[] => text.match(/\be\d+\.\d+\b/g) ?? [];

const shown = (number: number) => number.toFixed(0).padStart(8);

function line(what: string, { milliseconds, problems }: Askings, empty: Askings): void {
  const [middle, late] = [quantile(milliseconds, 0.5), quantile(milliseconds, 0.95)];
  const ratio = late / quantile(empty.milliseconds, 0.95);
  const rate = milliseconds.length / seconds;
  console.log(
    `${what.padEnd(22)}${shown(milliseconds.length)}${rate.toFixed(1).padStart(9)}${shown(middle)}${shown(late)}${ratio.toFixed(2).padStart(9)}${shown(problems.length)}`,
  );
}

let failed = true;
try {
  const all = await crowd();
  for (const address of instances.addresses)
    for (const project of all.projects)
      for (const page of ["brief", "side-by-side", "evaluation"])
        await asked(noAskings(), `${address}/project/${project}/${page}`, {
          headers: { cookie: all.editors[0]?.cookie ?? "" },
        });
  const held = [instances.memory()];
  const looking = setInterval(() => held.push(instances.memory()), (seconds / 5) * 1000);
  const outcome = await letWork(all, seconds, seeded(20_261_126));
  clearInterval(looking);
  const wrong = await missing(outcome.acknowledged, all);

  console.log(
    `${howManyEditors} editors (a save every ${pauses.editor} s on average, ${pauses.typing} s of typing, presence every ${pauses.presence} s) and ${howManyReaders} readers (a page every ${pauses.reader} s), ${howManyProjects} projects, two instances on one PostgreSQL, ${seconds} s`,
  );
  console.log("what                     times  a second  median     p95  p95 to empty  problems (milliseconds)");
  line("saves", outcome.saves, outcome.empty);
  line("reading pages", outcome.pages, outcome.empty);
  line("who is there", outcome.presence, outcome.empty);
  line("empty page", outcome.empty, outcome.empty);
  console.log(
    `${outcome.acknowledged.length} saves acknowledged, ${outcome.overtaken} came too late and were made again over the newer text, ${wrong.length} lost or doubled; every record ${wrong.some((one) => one.startsWith("the record")) ? "DOES NOT VERIFY" : "verifies"}`,
  );
  console.log(
    `resident memory of the two, MB, at first and after each fifth of the time: ${held.map((both) => both.map((one) => one.toFixed(0)).join(" and ")).join(", ")}`,
  );

  const mixed = noAskings();
  const cookie = all.editors[0]?.cookie ?? "";
  let turn = 0;
  const each = Math.min(20, seconds / 3);
  const empty = await throughput(
    () => asked(mixed, `${instances.addresses[turn++ % 2]}/no-such-page`, {}, [404]),
    each,
  );
  const pages = ["brief", "side-by-side", "infill", "cost", "evaluation", "recommendation"];
  const reading = await throughput(() => {
    turn += 1;
    const page = pages[turn % pages.length];
    return asked(mixed, `${instances.addresses[turn % 2]}/project/${all.projects[turn % 5]}/${page}`, {
      headers: { cookie },
    });
  }, each);
  console.log(
    `without a pause, eight at once: ${reading.toFixed(1)} reading pages a second against ${empty.toFixed(1)} empty ones, ratio ${(reading / empty).toFixed(2)}`,
  );

  const problems = [outcome.saves, outcome.pages, outcome.presence, outcome.empty, mixed].flatMap(
    (one) => one.problems,
  );
  for (const problem of [...problems.slice(0, 5), ...wrong.slice(0, 5)]) console.error(problem);
  if (instances.complaints() !== "") console.error(instances.complaints().slice(0, 4000));
  failed = problems.length > 0 || wrong.length > 0 || outcome.acknowledged.length === 0;
} finally {
  await store.close();
  await people.close();
  await instances.stop();
  cluster.stop();
}
process.exit(failed ? 1 : 0);
