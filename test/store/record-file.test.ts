import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { canonicalJson, recordFileVerdict, recordLines } from "#lib/store";
import { ada, ben, bid, withProject } from "./trial";

const folder = mkdtempSync(join(tmpdir(), "evenfield-record-file-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const python = spawnSync("python3", ["--version"], { encoding: "utf8" });
const hasPython = python.status === 0;
if (!hasPython) console.warn("python3 is not here, so the record was NOT verified by the independent script.");

let record = "";
beforeAll(async () => {
  const { store, project, bidA } = await withProject({ kind: "sqlite", folder: mkdtempSync(join(folder, "store-")) });
  const words = 'é \u{1f33f} “≥ 9” \\ " \t\r\n \u2028 \u007f 1e21';
  await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", words), ada);
  await store.documents.refuse(project, { sentence: "Not this.", fields: ["limit"] }, [], ben);
  await store.documents.remove({ ...bidA, version: 2 }, ben);
  record = recordLines(project, await store.record.list(project));
  await store.close();
});

/** How the verifier of the app, its command and the script answer for a file: 0 for intact. */
function verdicts(text: string) {
  const file = join(folder, "record.jsonl");
  writeFileSync(file, text);
  const script = hasPython
    ? spawnSync("python3", [new URL("../checks/verify_record.py", import.meta.url).pathname, file], {
        encoding: "utf8",
      })
    : null;
  return { own: recordFileVerdict(text).kind, script };
}

/** What an expression over the texts `given` comes to where the names of the script are known; one start of Python for all. */
function toldByScript(expression: string, given: readonly string[]): readonly unknown[] {
  const read = [
    "import json, sys; sys.path.insert(0, 'test/checks'); from verify_record import canonical, fault",
    `given = json.load(sys.stdin); print(json.dumps(${expression}))`,
  ].join("\n");
  const { status, stdout } = spawnSync("python3", ["-B", "-c", read], {
    ...{ encoding: "utf8", maxBuffer: 2 ** 26 },
    input: JSON.stringify(given),
  });
  expect(status).toBe(0);
  return JSON.parse(stdout);
}

describe("a record that was saved as a file", () => {
  test("is verified by the command, which names what does not hold and ends with 1", { timeout: 120_000 }, () => {
    const file = join(folder, "given.jsonl");
    const verify = () => {
      const command = ["--import", "tsx", "app/_commands/verify-record.ts", file];
      const { status, stdout } = spawnSync(process.execPath, command, { encoding: "utf8" });
      return { status, stdout };
    };
    const head = JSON.parse(record.split("\n")[0] ?? "");
    writeFileSync(file, record);
    expect(verify()).toStrictEqual({ status: 0, stdout: `intact  ${file}: 8 entries, head ${head.head}\n` });
    writeFileSync(file, record.replace("Bidder B", "Bidder X"));
    expect(verify()).toStrictEqual({
      status: 1,
      stdout: `broken  ${file}: Entry 5 is not as it was written: its hash does not belong to what it says.\n`,
    });
    rmSync(file);
    expect(verify()).toMatchObject({ status: 1, stdout: expect.stringMatching(/^broken {2}.*can’t be read/) });
  });

  test.skipIf(!hasPython)("is verified by a script that shares no code with the app", () => {
    const { own, script } = verdicts(record);
    expect(own).toBe("intact");
    expect(script).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^intact: 8 entries, head [0-9a-f]{64}\n$/),
    });
  });

  test.skipIf(!hasPython)("shows both verifiers any changed character, line taken out, doubled or exchanged", () => {
    const lines = record.split("\n").slice(0, -1);
    const joined = (changed: readonly string[]) => changed.map((line) => `${line}\n`).join("");
    const moved = lines.map((line, at) => (at === 3 ? lines[4] : at === 4 ? lines[3] : line) ?? line);
    const places = fc.nat(record.length - 1).filter((at) => /[A-Za-z0-9]/.test(record[at] ?? ""));
    const changed = fc.sample(places, 400).map((at) => {
      const other = record[at] === "7" ? "3" : "7";
      return `${record.slice(0, at)}${other}${record.slice(at + 1)}`;
    });
    const others = [
      joined(lines.slice(0, -1)),
      joined(lines.toSpliced(3, 1)),
      joined(lines.toSpliced(3, 0, lines[3] ?? "")),
      joined(moved),
      joined(lines.slice(1)),
      "",
      ...changed,
    ];
    expect(others.filter((text) => recordFileVerdict(text).kind !== "broken")).toEqual([]);
    const faults = toldByScript("[fault(text) for text in given]", [record, ...others]);
    expect(faults[0]).toBeNull();
    expect(faults.slice(1).filter((fault) => typeof fault !== "string" || fault === "")).toEqual([]);
    expect(verdicts(joined(lines.slice(1))).script?.status).toBe(1);
  });

  test.skipIf(!hasPython)(
    "has canonical JSON that the script writes alike: numbers, texts and order of members",
    () => {
      const values = fc.sample(
        fc.array(
          fc.oneof(
            fc.double({ noNaN: true, noDefaultInfinity: true }),
            fc.integer(),
            fc.string({ unit: "grapheme" }),
            fc.dictionary(
              fc.string({ unit: "binary" }),
              fc.constantFrom(null, true, 1e21, 1e-7, 123456789012345680000),
            ),
          ),
          { maxLength: 6 },
        ),
        300,
      );
      const told = toldByScript(
        "[canonical(json.loads(line)) for line in given]",
        values.map((value) => JSON.stringify(value)),
      );
      expect(told).toStrictEqual(values.map(canonicalJson));
    },
  );
});
