import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { expect, test } from "vitest";
import { backUp, explainBackupFault, type Location, restore } from "#lib/store";
import { ada, ben, bid, northField, open, type TrialMaker, withProject } from "./trial";

async function backupOf(location: Location): Promise<readonly string[]> {
  const lines: string[] = [];
  await backUp(
    location,
    async (line) => {
      lines.push(line.slice(0, -1));
    },
    "2026-05-01T00:00:00.000Z",
  );
  return lines;
}

const from = (lines: readonly string[]) =>
  async function* () {
    yield* lines;
  };

/** Projects of every sort: one with a draft and two parts of a file, one removed, letters outside ASCII. */
async function filled(location: Location): Promise<Readonly<{ project: string; sha256: string }>> {
  const { store, project, bidA } = await withProject(location);
  await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder Ä – “A”"), ben);
  await store.drafts.keep({ ...bidA, version: 2 }, { bidder: "typed" }, ada);
  const kept = await store.contents.keep(project, { name: "report.pdf" }, new Uint8Array(300_000).fill(7), ada);
  if (kept.kind !== "saved") throw new Error(kept.kind);
  const [sha256 = ""] = await store.contents.held(project);
  const gone = await store.projects.create({ ...northField, name: "Gone" }, ada);
  if (gone.kind !== "saved") throw new Error(gone.kind);
  await store.projects.remove(gone.id, ada);
  await store.close();
  return { project, sha256 };
}

/** What a backup promises, from the databases of one maker into those of another. */
export function backupContract(source: TrialMaker, target: TrialMaker): void {
  test("holds every row, and brings all of it back with its record intact", async () => {
    const { location } = await source("tables");
    const { project, sha256 } = await filled(location);
    const lines = await backupOf(location);
    const place = await target();
    expect(await restore(place.location, from(lines))).toEqual({
      kind: "restored",
      projects: 2,
      rows: lines.length - 2,
    });
    expect((await backupOf(place.location)).slice(1, -1).toSorted()).toEqual(lines.slice(1, -1).toSorted());
    const store = await open(place.location);
    expect(await store.record.verify(project)).toMatchObject({ kind: "intact" });
    expect(await store.contents.verify(project)).toEqual([]);
    expect((await store.contents.open(project, sha256))?.bytes).toBe(300_000);
    expect((await store.projects.listRemoved()).map(({ name }) => name)).toEqual(["Gone"]);
    await store.close();
  });

  test("overwrites nothing", async () => {
    const { location } = await source("tables");
    await filled(location);
    const lines = await backupOf(location);
    const place = await target();
    await (await withProject(place.location)).store.close();
    const before = await backupOf(place.location);
    expect(await restore(place.location, from(lines))).toEqual({
      kind: "refused",
      fault: { kind: "place-taken", projects: 1 },
    });
    expect(await backupOf(place.location)).toEqual(before);
  });

  test("brings back nothing of a file that is cut off, altered or something else", async () => {
    const { location } = await source("tables");
    await filled(location);
    const lines = await backupOf(location);
    const place = await target();
    const empty = await backupOf(place.location);
    const refused = async (damaged: readonly string[]) => {
      const outcome = await restore(place.location, from(damaged));
      expect((await backupOf(place.location)).slice(1)).toEqual(empty.slice(1));
      return outcome.kind === "refused" ? explainBackupFault(outcome.fault) : outcome.kind;
    };
    expect(await refused(lines.slice(0, -1))).toBe("The backup is cut off: its last line is missing.");
    expect(await refused(lines.toSpliced(3, 1))).toMatch(/^The backup is not as it was written/);
    expect(await refused(lines.map((line) => line.replace("North field", "South field")))).toMatch(
      /^The backup is not as it was written/,
    );
    expect(await refused(lines.with(2, '{"secret":{}}'))).toMatch(/^Line 3 of the backup can’t be read/);
    expect(await refused(lines.with(2, "no JSON"))).toMatch(/^Line 3 of the backup can’t be read/);
    expect(await refused([])).toMatch(/^The file is no backup/);
    expect(await refused(["hello", ...lines])).toMatch(/^The file is no backup/);
    expect(await refused(lines.with(0, (lines[0] ?? "").replace(/"tables":"0/, '"tables":"9')))).toMatch(
      /^The backup has tables of a later version/,
    );
  });

  test("leads data of the first tables to today’s", async () => {
    const folder = mkdtempSync(join(tmpdir(), "evenfield-first-"));
    const file = new SqliteFile(join(folder, "evenfield.sqlite"));
    file.exec(readFileSync(new URL("./fixtures/first-schema.sql", import.meta.url), "utf8"));
    const rows = (table: string) =>
      file
        .prepare(`select * from ${table}`)
        .all()
        .map((row) => JSON.stringify({ [table]: row }));
    const head = {
      format: "evenfield-backup",
      version: 1,
      madeAt: "",
      tables: "0001-projects-documents-drafts-record",
    };
    const body = [JSON.stringify(head), ...["project", "document", "draft", "record"].flatMap(rows)];
    file.close();
    rmSync(folder, { recursive: true });
    const sha256 = createHash("sha256")
      .update(body.map((line) => `${line}\n`).join(""))
      .digest("hex");
    const place = await target();
    const lines = [...body, JSON.stringify({ rows: body.length - 1, sha256 })];
    expect(await restore(place.location, from(lines))).toMatchObject({ kind: "restored", projects: 1 });
    const store = await open(place.location);
    expect(await store.record.verify("first-project")).toMatchObject({ kind: "intact", entries: 7 });
    await store.close();
    expect(await restore(place.location, from(lines))).toMatchObject({ fault: { kind: "place-further-on" } });
  });
}
