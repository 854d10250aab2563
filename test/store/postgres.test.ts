import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { startProxy } from "../faults/proxy";
import { backupContract } from "./backup-contract";
import { contentsContract } from "./contents-contract";
import { storeContract } from "./contract";
import { peopleContract } from "./people-contract";
import { type Cluster, postgresPrograms, query, startCluster } from "./postgres-cluster";
import { sqliteTrials } from "./sqlite-trial";
import { ada, bid, open, type TrialMaker, withProject } from "./trial";

const programs = postgresPrograms();
if (programs === null) {
  console.warn("NOT TESTED: the store over PostgreSQL. The server programs (initdb, pg_ctl) are not installed here.");
}

describe.skipIf(programs === null)("the store over PostgreSQL", { timeout: 120_000 }, () => {
  let cluster: Cluster;
  beforeAll(async () => {
    cluster = await startCluster(programs ?? "");
  }, 60_000);
  afterAll(() => cluster?.stop(), 60_000);

  let withTables: Promise<string> | undefined;
  const makeTables = async (): Promise<string> => {
    const url = await cluster.newDatabase();
    await (await open({ kind: "postgres", url })).close();
    return url;
  };
  const postgresTrial: TrialMaker = async (holding) => {
    withTables ??= makeTables();
    const url = await cluster.newDatabase(holding === "tables" ? await withTables : undefined);
    return { location: { kind: "postgres", url }, raw: (sql) => query(url, sql) };
  };
  /** A store behind a proxy, with one project, which was made past the proxy and without the parameters. */
  const proxied = async (parameters: string) => {
    const proxy = await startProxy(cluster.port);
    const direct = await cluster.newDatabase();
    const { store: maker, bidA, project } = await withProject({ kind: "postgres", url: direct });
    await maker.close();
    const store = await open({ kind: "postgres", url: direct.replace(/:\d+\//, `:${proxy.port}/`) + parameters });
    const end = async () => {
      await store.close();
      proxy.stop();
    };
    return {
      proxy,
      store,
      project,
      end,
      write: (version: number) => store.documents.replace({ ...bidA, version }, bid("A"), ada),
      read: () => store.documents.read(bidA),
    };
  };

  test("comes back by itself when its connections were cut, also between a commit and its answer", async () => {
    const { proxy, store, project, write, read, end } = await proxied("");
    const unanswered = proxy.strike("answer-lost");
    await expect(write(1)).rejects.toThrow(/^The database does not answer \(.*\)\. Whether the last change was kept/);
    await unanswered;
    expect((await read())?.version).toBe(2); // it was kept
    const unsent = proxy.strike("commit-lost");
    await expect(write(2)).rejects.toThrow("The database does not answer");
    await unsent;
    expect((await read())?.version).toBe(2); // it was not
    await proxy.strike("cut");
    const lateNotice = { timeout: 30_000, interval: 50 }; // who has not seen the cut yet writes to nobody, and is told so
    expect(await vi.waitFor(() => write(2), lateNotice)).toMatchObject({ kind: "saved", version: 3 });
    expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries: 7 });
    await end();
  });

  // less than the 35 seconds that are waited where no time is named
  test("gives an error within its time where nobody answers, and comes back", { timeout: 30_000 }, async () => {
    const { proxy, write, read, end } = await proxied("?query_timeout=2000");
    expect((await read())?.version).toBe(1); // a connection is open
    await proxy.strike("silence");
    await expect(write(1)).rejects.toThrow("The database does not answer (Query read timeout)");
    proxy.heal();
    expect((await read())?.version).toBe(1);
    expect(await write(1)).toMatchObject({ kind: "saved", version: 2 });
    await end();
  });

  storeContract(postgresTrial);
  contentsContract(postgresTrial);
  describe("a backup", () => backupContract(postgresTrial, postgresTrial));
  describe("people", () => peopleContract(postgresTrial, sqliteTrials()));
  describe("a backup of SQLite", () => backupContract(sqliteTrials(), postgresTrial));
});
