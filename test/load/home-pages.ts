import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import type { Location } from "#lib/store";

const firstPort = Number(process.env.EVENFIELD_BENCH_PORT ?? "3990");

const pages: Readonly<Record<string, string>> = {
  "first page": "/",
  "search that finds many": "/?search=north+field",
  "search that finds none": "/?search=nowhere",
};

/** Milliseconds in the middle of many askings, by what was asked for. */
type Times = Readonly<Record<string, number>>;

const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN;

const settings = (location: Location): Record<string, string> =>
  location.kind === "sqlite" ? { EVENFIELD_DATA: location.folder, DATABASE_URL: "" } : { DATABASE_URL: location.url };

/** The first page of the built app over each of two stores, asked for in turn. */
export async function homePages(one: Location, other: Location, rounds: number): Promise<readonly Times[]> {
  const servers: ChildProcess[] = [];
  try {
    const addresses: string[] = [];
    for (const [index, location] of [one, other].entries()) {
      const port = firstPort + index;
      servers.push(
        spawn(process.execPath, ["--max-semi-space-size=64", "app/_commands/start.mjs"], {
          env: { ...process.env, PORT: String(port), ...settings(location) },
          stdio: "ignore",
        }),
      );
      addresses.push(`http://127.0.0.1:${port}`);
      await untilAnswered(addresses[index] ?? "");
    }
    const times = addresses.map(() => Object.fromEntries(Object.keys(pages).map((name) => [name, [] as number[]])));
    for (let round = 0; round < rounds + 10; round += 1)
      for (const [name, page] of Object.entries(pages))
        for (const [index, address] of addresses.entries()) {
          const began = performance.now();
          const answer = await fetch(`${address}${page}`);
          await answer.text();
          if (!answer.ok) throw new Error(`${page}: ${answer.status}`);
          if (round >= 10) times[index]?.[name]?.push(performance.now() - began);
        }
    return times.map((all) => Object.fromEntries(Object.entries(all).map(([name, each]) => [name, median(each)])));
  } finally {
    for (const server of servers) {
      const ended = once(server, "exit");
      server.kill("SIGTERM");
      await ended;
    }
  }
}

async function untilAnswered(address: string): Promise<void> {
  for (let attempt = 0; attempt < 1200; attempt += 1) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error("the server did not come up within ten minutes");
}
