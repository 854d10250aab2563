import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { expect, onTestFinished, test } from "vitest";

/** Runs a command of the shell on the store in a folder. */
function run(command: "backup" | "restore", folder: string, file: string) {
  const { DATABASE_URL: _, ...environment } = process.env;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", "tsx", `app/_commands/${command}.ts`, file],
    { encoding: "utf8", env: { ...environment, EVENFIELD_DATA: folder } },
  );
  return { status, stdout, stderr };
}

test("what the commands back up and restore holds, and what is damaged changes nothing", { timeout: 120_000 }, () => {
  const place = mkdtempSync(join(tmpdir(), "evenfield-backup-"));
  onTestFinished(() => rmSync(place, { recursive: true, force: true }));
  const [first, backup] = [join(place, "first"), join(place, "backup.gz")];
  mkdirSync(first);
  const file = new SqliteFile(join(first, "evenfield.sqlite"));
  file.exec(readFileSync(new URL("./fixtures/first-schema.sql", import.meta.url), "utf8"));
  file.close();

  const made = run("backup", first, backup);
  expect(made).toMatchObject({ status: 0, stderr: "" });
  expect(made.stdout).toContain("1 project, ");
  expect(made.stdout).toMatch(
    /intact {2}first-project {2}North field: 7 entries.*\nrestored for trial, every record holds\n$/,
  );
  expect(run("backup", first, backup)).toMatchObject({ status: 1, stderr: expect.stringContaining("exists already") });

  const restored = run("restore", join(place, "restored"), backup);
  expect(restored).toMatchObject({ status: 0, stderr: "" });
  expect(restored.stdout).toContain("intact  first-project  North field: 7 entries");

  const bytes = readFileSync(backup);
  const damaged = join(place, "damaged.gz");
  writeFileSync(damaged, bytes.subarray(0, bytes.length - 40));
  const refused = run("restore", join(place, "other"), damaged);
  expect(refused).toMatchObject({ status: 1, stderr: expect.stringContaining("Nothing was restored") });
  expect(existsSync(`${backup}.partial`)).toBe(false);
});
