import { documentSchemas } from "#lib/evaluation";
import { environmentStore } from "#lib/store";

const patience = 2000;

/** Whether requests can be served: the database is open, migrated, and answers within two seconds. */
export async function GET(): Promise<Response> {
  const isReady = await Promise.race([
    answers(),
    new Promise<false>((resolve) => setTimeout(() => resolve(false), patience).unref()),
  ]);
  return new Response(isReady ? "ready\n" : "The database does not answer.\n", {
    status: isReady ? 200 : 503,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
  });
}

async function answers(): Promise<boolean> {
  try {
    // opening migrates; a project of no id is looked for, which none has
    const store = await environmentStore({ schemas: documentSchemas, scope: { kind: "project", project: "" } });
    await store.projects.page({ limit: 1 });
    return true;
  } catch {
    return false;
  }
}
