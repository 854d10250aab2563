import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { expect, test } from "vitest";

const head = "97d9457d7872acaa03b71d51befb75017d277af0fd9a87b45b7c50727f15cef1";

test("the command says of every project whether its record holds", { timeout: 120_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-verify-"));
  const { DATABASE_URL: _, ...environment } = process.env;
  const verify = () => {
    const command = ["--import", "tsx", "app/_commands/verify-record.ts"];
    const { status, stdout } = spawnSync(process.execPath, command, {
      encoding: "utf8",
      env: { ...environment, EVENFIELD_DATA: folder },
    });
    return { status, stdout };
  };
  const file = new SqliteFile(join(folder, "evenfield.sqlite"));
  file.exec(readFileSync(new URL("./fixtures/first-schema.sql", import.meta.url), "utf8"));
  expect(verify()).toStrictEqual({
    status: 0,
    stdout: `1 project in ${folder}\nintact  first-project  North field: 7 entries, head ${head}\n`,
  });
  file.exec("update document set body = replace(body, '165', '200') where kind = 'requirements'");
  expect(verify()).toStrictEqual({
    status: 1,
    stdout:
      `1 project in ${folder}\nbroken  first-project  North field: The version, format, position or body of ` +
      "requirements “requirements” is not what the record says last: it was altered past the record.\n",
  });
  file.close();
  rmSync(folder, { recursive: true, force: true });
});
