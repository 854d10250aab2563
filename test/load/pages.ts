import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { localEditor } from "#lib/access";
import { documentSchemas, type ProjectFile } from "#lib/evaluation";
import { openStore } from "#lib/store";
import demonstration from "../../app/_demo/demonstration-project.json";

/** Bytes of gzipped first-load script and of the gzipped page, and the median time to the whole page. */
export type PageWeight = Readonly<{ name: string; script: number; html: number; milliseconds: number }>;

const port = 3990;
const address = `http://127.0.0.1:${port}`;
const visits = 15;
const readingPages = ["side-by-side", "infill", "hardness", "cost", "evaluation", "recommendation"];
const writingPages = ["brief", "requirements", "bids", "bids/bid-a"];

async function withDemonstration(folder: string): Promise<string> {
  const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
  const { brief, requirements, bids } = demonstration as ProjectFile;
  const outcome = await store.projects.create(
    {
      name: brief.name,
      owner: brief.owner,
      origin: "demo",
      documents: [
        { kind: "brief", body: brief },
        { kind: "requirements", body: requirements },
        ...bids.map(({ id, ...body }) => ({ kind: "bid", id, body }) as const),
      ],
    },
    localEditor,
  );
  await store.close();
  if (outcome.kind !== "saved") throw new Error("the demonstration project was not stored");
  return outcome.id;
}

async function untilAnswered(): Promise<void> {
  for (let attempt = 0; attempt < 600; attempt += 1) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error("the server did not come up within five minutes");
}

/** Scripts a modern browser fetches for a page: what the page names, less what only old browsers take. */
const scriptsOf = (html: string): readonly string[] => [
  ...new Set(
    [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"[^>]*>/g)].flatMap(([tag, source]) =>
      source === undefined || /\snomodule/i.test(tag) ? [] : [source.replaceAll("&amp;", "&")],
    ),
  ),
];

async function weigh(name: string, path: string): Promise<PageWeight> {
  const times: number[] = [];
  let html = "";
  for (let visit = 0; visit < visits; visit += 1) {
    const start = performance.now();
    html = await (await fetch(`${address}${path}`)).text();
    times.push(performance.now() - start);
  }
  let script = 0;
  for (const source of scriptsOf(html)) {
    const answer = await fetch(`${address}${source}`);
    script += gzipSync(new Uint8Array(await answer.arrayBuffer()), { level: 6 }).length;
  }
  const milliseconds = times.toSorted((a, b) => a - b)[Math.floor(visits / 2)] ?? Number.NaN;
  return { name, script, html: gzipSync(html).length, milliseconds };
}

/** Starts the built app on a store of its own and weighs its pages; the empty page is the one for unknown addresses. */
export async function measurePages(): Promise<Readonly<{ empty: PageWeight; pages: readonly PageWeight[] }>> {
  const folder = await mkdtemp(join(tmpdir(), "evenfield-bench-"));
  const project = await withDemonstration(folder);
  const server = spawn(process.execPath, ["app/_commands/start.mjs"], {
    env: { ...process.env, PORT: String(port), EVENFIELD_DATA: folder, DATABASE_URL: "" },
    stdio: "ignore",
  });
  try {
    await untilAnswered();
    const empty = await weigh("empty page", "/no-such-page");
    const pages: PageWeight[] = [];
    for (const page of [...readingPages, ...writingPages]) pages.push(await weigh(page, `/project/${project}/${page}`));
    return { empty, pages };
  } finally {
    server.kill("SIGTERM");
    await rm(folder, { recursive: true, force: true });
  }
}
