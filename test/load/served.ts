import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { localEditor } from "#lib/access";
import { documentSchemas, type ProjectFile } from "#lib/evaluation";
import { openStore } from "#lib/store";

const port = Number(process.env.EVENFIELD_BENCH_PORT ?? "3990");
export const address = `http://127.0.0.1:${port}`;

async function stored(folder: string, { brief, requirements, bids }: ProjectFile): Promise<string> {
  const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
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
  if (outcome.kind !== "saved") throw new Error("the project was not stored");
  return outcome.id;
}

async function untilAnswered(): Promise<void> {
  for (let attempt = 0; attempt < 1200; attempt += 1) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error("the server did not come up within ten minutes");
}

/** Starts the built app on a store of its own that holds one project, and stops it when the work is done. */
export async function served<Outcome>(
  file: ProjectFile,
  work: (project: string) => Promise<Outcome>,
): Promise<Outcome> {
  const folder = await mkdtemp(join(tmpdir(), "evenfield-bench-"));
  const project = await stored(folder, file);
  const server = spawn(process.execPath, ["--max-semi-space-size=64", "app/_commands/start.mjs"], {
    env: { ...process.env, PORT: String(port), EVENFIELD_DATA: folder, DATABASE_URL: "" },
    stdio: "ignore",
  });
  const ended = new Promise((resolve) => server.once("exit", resolve));
  try {
    await untilAnswered();
    return await work(project);
  } finally {
    server.kill("SIGTERM");
    await ended;
    await rm(folder, { recursive: true, force: true });
  }
}
