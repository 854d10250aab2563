import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { localEditor } from "#lib/access";
import { documentSchemas } from "#lib/evaluation";
import { openStore } from "#lib/store";
import { pdf } from "../attachment/small-files";
import { ratedToStore } from "../evaluation/procedure/rated-project";

// The server is asked to stop while a file is on its way to it. The file is kept and acknowledged, then the server ends.

const port = 3988;
const address = `http://127.0.0.1:${port}`;
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evenfield-stop-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function started(): Promise<ChildProcess> {
  const server = spawn(process.execPath, ["app/_commands/start.mjs"], {
    env: { ...process.env, PORT: String(port), HOST: "127.0.0.1", EVENFIELD_DATA: folder, DATABASE_URL: "" },
    stdio: "ignore",
  });
  for (let attempt = 0; attempt < 1200; attempt += 1) {
    if ((await fetch(`${address}/ready`).catch(() => null))?.ok) return server;
    await pause(250);
  }
  throw new Error("the server did not come up");
}

test("a stop waits for what is under way, takes nothing new, and ends well", { timeout: 900_000 }, async () => {
  const before = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
  const made = await before.projects.import(ratedToStore, localEditor);
  await before.close();
  if (made.kind !== "saved") throw new Error(made.kind);
  const project = made.id;
  const server = await started();
  const ended = once(server, "exit");
  const bytes = Buffer.from(pdf({ pages: 3 }));
  const sending = request(`${address}/project/${project}/attachments/upload`, {
    method: "POST",
    headers: {
      "content-length": bytes.length,
      origin: address,
      "sec-fetch-site": "same-origin",
      "x-file-name": "a.pdf",
    },
  });
  const answered = once(sending, "response");
  const half = Math.floor(bytes.length / 2);
  await new Promise((resolve) => sending.write(bytes.subarray(0, half), resolve));
  await pause(500); // it has begun to read
  server.kill("SIGTERM");
  await pause(500);
  await expect(fetch(`${address}/health`)).rejects.toThrow(); // nothing new
  sending.end(bytes.subarray(half));
  const [answer] = await answered;
  let text = "";
  for await (const part of answer) text += String(part);
  expect([answer.statusCode, JSON.parse(text)]).toMatchObject([200, { kind: "kept", name: "a.pdf" }]);
  expect(await ended).toEqual([0, null]);

  const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
  expect((await store.record.list(project)).at(-1)).toMatchObject({ kind: "attachment", action: "create" });
  expect(await store.record.verify(project)).toMatchObject({ kind: "intact" });
  expect(await store.contents.verify(project)).toEqual([]);
  await store.close();

  const again = await started(); // the port is free and the store opens at once
  const over = once(again, "exit");
  again.kill("SIGTERM");
  expect(await over).toEqual([0, null]);
});
