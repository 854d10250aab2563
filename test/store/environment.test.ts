import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { environmentLocation, environmentStore } from "#lib/store";
import { ada, northField, schemas } from "./trial";

afterEach(() => vi.unstubAllEnvs());

test("the data are in ./data, in the folder that is named, or in the database that is named", () => {
  vi.stubEnv("DATABASE_URL", undefined);
  vi.stubEnv("EVENFIELD_DATA", undefined);
  expect(environmentLocation()).toStrictEqual({ kind: "sqlite", folder: join(process.cwd(), "data") });
  vi.stubEnv("EVENFIELD_DATA", "elsewhere");
  expect(environmentLocation()).toStrictEqual({ kind: "sqlite", folder: join(process.cwd(), "elsewhere") });
  vi.stubEnv("EVENFIELD_DATA", "/srv/evenfield");
  expect(environmentLocation()).toStrictEqual({ kind: "sqlite", folder: "/srv/evenfield" });
  vi.stubEnv("DATABASE_URL", "postgres://localhost/evenfield");
  expect(environmentLocation()).toStrictEqual({ kind: "postgres", url: "postgres://localhost/evenfield" });
});

test("one process opens the database of its environment once, also after its modules are loaded anew", async () => {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-environment-"));
  vi.stubEnv("DATABASE_URL", undefined);
  vi.stubEnv("EVENFIELD_DATA", folder);
  const store = await environmentStore({ schemas, scope: { kind: "everything" } });
  const made = await store.projects.create(northField, ada);
  expect(made.kind).toBe("saved");
  vi.resetModules();
  const reloaded = await import("#lib/store");
  expect(reloaded.environmentStore).not.toBe(environmentStore);
  const again = await reloaded.environmentStore({ schemas, scope: { kind: "everything" } });
  expect(again.close).toBe(store.close);
  expect((await again.projects.list()).map(({ name }) => name)).toStrictEqual(["North field"]);
  await store.close();
  const afterClosing = await environmentStore({ schemas, scope: { kind: "everything" } });
  expect(await afterClosing.projects.list()).toHaveLength(1);
  await afterClosing.close();
  rmSync(folder, { recursive: true, force: true });
});
