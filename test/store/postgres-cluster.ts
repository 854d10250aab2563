import { execFileSync } from "node:child_process";
import { chmodSync, chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";

/** A PostgreSQL server of the test's own, with nothing in it, on a loopback port. */
export type Cluster = Readonly<{
  /** Makes a new database, empty or a copy of the one at an address that nobody is connected to; gives its address. */
  newDatabase: (like?: string) => Promise<string>;
  port: number;
  /** Kills the server and all its processes at once, as a crash of it would; gives their number. */
  kill: () => number;
  /** Starts it where it is not running; false where it ran. */
  revive: () => boolean;
  stop: () => void;
}>;

/**
 * `outlivesCrash` makes it wait for the disk as a server in use does, which costs time. `home` is an empty folder to put
 * its data into, in place of one of its own; then they take as little room as may be.
 */
export type ClusterWish = Readonly<{ outlivesCrash?: boolean; home?: string }>;

/** Folder of the newest PostgreSQL server programs installed here, null if there are none. */
export function postgresPrograms(): string | null {
  const debian = "/usr/lib/postgresql";
  const versions = existsSync(debian) ? readdirSync(debian).sort((one, other) => Number(other) - Number(one)) : [];
  const folders = [...versions.map((version) => join(debian, version, "bin")), ...(process.env.PATH ?? "").split(":")];
  return folders.find((folder) => existsSync(join(folder, "initdb")) && existsSync(join(folder, "pg_ctl"))) ?? null;
}

/** Starts a server from nothing; PostgreSQL refuses to run as root, so root hands it to the user postgres. */
export async function startCluster(
  programs: string,
  { outlivesCrash = false, home }: ClusterWish = {},
): Promise<Cluster> {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-postgres-"));
  const held = home ?? folder;
  const owner = process.getuid?.() === 0 ? userPostgres() : null;
  const identity = owner ?? {};
  const data = join(held, "data");
  if (home !== undefined) mkdirSync(data);
  for (const one of home === undefined ? [folder] : [folder, data]) {
    if (owner) chownSync(one, owner.uid, owner.gid);
    chmodSync(one, 0o700);
  }
  const port = await freePort();
  const run = (program: string, ...options: string[]) =>
    execFileSync(join(programs, program), options, { stdio: "ignore", cwd: folder, ...identity });
  const small = home === undefined ? [] : ["--wal-segsize=1"];
  run("initdb", "-D", data, "-U", "evenfield", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync", ...small);
  const settings = [
    ...["listen_addresses=127.0.0.1", `port=${port}`, "unix_socket_directories="],
    // Where nothing has to outlive the server, it need not wait for the disk.
    ...(outlivesCrash ? ["fsync=on", "synchronous_commit=on", "recovery_init_sync_method=syncfs"] : ["fsync=off"]),
    ...(home === undefined ? [] : ["min_wal_size=2MB", "max_wal_size=4MB"]),
  ];
  const set = settings.map((setting) => `-c ${setting}`).join(" ");
  const start = () => run("pg_ctl", "-D", data, "-w", "-l", join(folder, "log"), "-o", set, "start");
  start();
  const address = (database: string) => `postgres://evenfield@127.0.0.1:${port}/${database}`;
  const leader = (): number | null => {
    const file = join(data, "postmaster.pid");
    const id = existsSync(file) ? Number(readFileSync(file, "utf8").split("\n")[0]) : null;
    return id !== null && isProcess(id) ? id : null;
  };
  let made = 0;
  return {
    port,
    async newDatabase(like) {
      const name = `trial_${++made}`;
      const copied = like === undefined ? "" : ` template ${like.slice(like.lastIndexOf("/") + 1)}`;
      await query(address("postgres"), `create database ${name}${copied}`);
      return address(name);
    },
    kill() {
      const first = leader();
      if (first === null) return 0;
      process.kill(first, "SIGSTOP"); // else it would start others while these are killed
      const others = childrenOf(first);
      for (const id of [first, ...others]) if (isProcess(id)) process.kill(id, "SIGKILL");
      while ([first, ...others].some(isProcess)) sleep(5);
      // Dead, it may wait for long until somebody notices; the next server would take it for running.
      rmSync(join(data, "postmaster.pid"));
      return 1 + others.length;
    },
    revive() {
      if (leader() !== null) return false;
      start();
      return true;
    },
    stop() {
      try {
        if (!existsSync("/proc") || leader() !== null) run("pg_ctl", "-D", data, "-w", "-m", "immediate", "stop");
      } catch (problem) {
        if (leader() !== null) throw problem; // else it stopped by itself meanwhile
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Holds up this whole process. */
const sleep = (milliseconds: number) => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, milliseconds);

/** Whether a process runs; one that has ended and waits to be noticed does not. Reads the list of processes that Linux keeps. */
const isProcess = (id: number): boolean => /^[^ZX]$/.test(statOf(id)?.state ?? "Z");

const childrenOf = (parent: number): readonly number[] =>
  readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((id) => statOf(id)?.parent === parent);

/** Null where there is no such process. */
function statOf(id: number): Readonly<{ state: string; parent: number }> | null {
  const file = `/proc/${id}/stat`;
  if (!existsSync(file)) return null;
  try {
    const [state = "", parent] = readFileSync(file, "utf8")
      .replace(/^.*\) /s, "")
      .split(" ");
    return { state, parent: Number(parent) };
  } catch {
    return null; // it has ended in between
  }
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
