import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";

export const secret = "an invented secret of the bench, 0123456789";

const firstPort = Number(process.env.EVENFIELD_BENCH_PORT ?? "3990");

/** Two instances of the built app on one database, by their addresses. */
export type Instances = Readonly<{
  addresses: readonly [string, string];
  /** Resident memory of each, in megabytes; NaN where the system does not tell. */
  memory: () => readonly number[];
  /** What they complained of so far. */
  complaints: () => string;
  stop: () => Promise<void>;
}>;

export async function twoInstances(url: string): Promise<Instances> {
  const addresses = [`http://127.0.0.1:${firstPort}`, `http://127.0.0.1:${firstPort + 1}`] as const;
  const servers: ChildProcess[] = [];
  let complaints = "";
  for (const [index, address] of addresses.entries()) {
    const server = spawn(process.execPath, ["--max-semi-space-size=64", "app/_commands/start.mjs"], {
      env: {
        ...process.env,
        ...{ PORT: String(firstPort + index), DATABASE_URL: url, EVENFIELD_SECRET: secret },
        EVENFIELD_ADDRESS: addresses[0],
      },
      stdio: ["ignore", "ignore", "pipe"],
    });
    server.stderr?.on("data", (text) => {
      complaints += String(text);
    });
    servers.push(server);
    await untilAnswered(`${address}/ready`); // the first makes the tables
  }
  return {
    addresses,
    memory: () => servers.map(({ pid }) => residentMegabytes(pid)),
    complaints: () => complaints,
    async stop() {
      await Promise.all(
        servers.map(async (server) => {
          const ended = once(server, "exit");
          server.kill("SIGTERM");
          await ended;
        }),
      );
    },
  };
}

/** @source Linux manual pages, proc_pid_status(5): VmRSS in kibibytes */
function residentMegabytes(pid: number | undefined): number {
  try {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1]) / 1024;
  } catch {
    return Number.NaN;
  }
}

export async function untilAnswered(address: string): Promise<void> {
  for (let attempt = 0; attempt < 1200; attempt += 1) {
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error("the server did not come up within ten minutes");
}
