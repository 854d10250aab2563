import { execFileSync } from "node:child_process";
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";

/** A PostgreSQL server of the test's own, with nothing in it, on a loopback port. */
export type Cluster = Readonly<{
  /** Makes a new, empty database and gives its address. */
  newDatabase: () => Promise<string>;
  stop: () => void;
}>;

/** Folder of the newest PostgreSQL server programs installed here, null if there are none. */
export function postgresPrograms(): string | null {
  const debian = "/usr/lib/postgresql";
  const versions = existsSync(debian) ? readdirSync(debian).sort((one, other) => Number(other) - Number(one)) : [];
  const folders = [...versions.map((version) => join(debian, version, "bin")), ...(process.env.PATH ?? "").split(":")];
  return folders.find((folder) => existsSync(join(folder, "initdb")) && existsSync(join(folder, "pg_ctl"))) ?? null;
}

/** Starts a server from nothing; PostgreSQL refuses to run as root, so root hands it to the user postgres. */
export async function startCluster(programs: string): Promise<Cluster> {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-postgres-"));
  const owner = process.getuid?.() === 0 ? userPostgres() : null;
  const identity = owner ?? {};
  if (owner) chownSync(folder, owner.uid, owner.gid);
  chmodSync(folder, 0o700);
  const data = join(folder, "data");
  const port = await freePort();
  const run = (program: string, ...options: string[]) =>
    execFileSync(join(programs, program), options, { stdio: "ignore", cwd: folder, ...identity });
  run("initdb", "-D", data, "-U", "evenfield", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync");
  // Nothing here has to outlive the server, so it need not wait for the disk.
  const settings = `-c listen_addresses=127.0.0.1 -c port=${port} -c unix_socket_directories= -c fsync=off`;
  run("pg_ctl", "-D", data, "-w", "-l", join(folder, "log"), "-o", settings, "start");
  const address = (database: string) => `postgres://evenfield@127.0.0.1:${port}/${database}`;
  let made = 0;
  return {
    async newDatabase() {
      const name = `trial_${++made}`;
      await query(address("postgres"), `create database ${name}`);
      return address(name);
    },
    stop() {
      run("pg_ctl", "-D", data, "-w", "-m", "immediate", "stop");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Runs raw SQL past the store. */
export async function query(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

function userPostgres(): Readonly<{ uid: number; gid: number }> {
  const id = (flag: string) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
  return { uid: id("-u"), gid: id("-g") };
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = typeof address === "object" && address ? address.port : 0;
      server.close(() => resolve(port));
    });
  });
}
