import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { type Location, openPeople } from "#lib/store";
import { secret, untilAnswered } from "./two-instances";

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

const settings = (location: Location, address: string): Record<string, string> =>
  location.kind === "sqlite"
    ? { EVENFIELD_DATA: location.folder, DATABASE_URL: "", EVENFIELD_MODE: "" }
    : { DATABASE_URL: location.url, EVENFIELD_ADDRESS: address, EVENFIELD_SECRET: secret };

/** On a shared database its administrator asks, whose pages list every project; on one computer anybody. */
async function cookieFor(location: Location, address: string): Promise<string> {
  if (location.kind === "sqlite") return "";
  const people = await openPeople(location, { secret, address });
  const token = (await people.accounts.firstOwnerToken()) ?? "";
  const owner = { name: "Dana Ruiz", email: "dana@larkmoor.example", organisation: "Larkmoor Valley School District" };
  const entered = await people.accounts.enter(token, { ...owner, password: "clover meadow anvil tide" }, "bench");
  await people.close();
  if (entered.kind !== "signed-in") throw new Error(entered.kind);
  return `${entered.cookie.name}=${encodeURIComponent(entered.cookie.value)}`;
}

/** The first page of the built app over each of two stores, asked for in turn. */
export async function homePages(one: Location, other: Location, rounds: number): Promise<readonly Times[]> {
  const servers: ChildProcess[] = [];
  try {
    const asked: Readonly<{ address: string; cookie: string }>[] = [];
    for (const [index, location] of [one, other].entries()) {
      const port = firstPort + index;
      const address = `http://127.0.0.1:${port}`;
      servers.push(
        spawn(process.execPath, ["--max-semi-space-size=64", "app/_commands/start.mjs"], {
          env: { ...process.env, PORT: String(port), ...settings(location, address) },
          stdio: "ignore",
        }),
      );
      await untilAnswered(`${address}/health`);
      asked.push({ address, cookie: await cookieFor(location, address) });
    }
    const times = asked.map(() => Object.fromEntries(Object.keys(pages).map((name) => [name, [] as number[]])));
    for (let round = 0; round < rounds + 10; round += 1)
      for (const [name, page] of Object.entries(pages))
        for (const [index, { address, cookie }] of asked.entries()) {
          const began = performance.now();
          const answer = await fetch(`${address}${page}`, { headers: { cookie }, redirect: "manual" });
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
