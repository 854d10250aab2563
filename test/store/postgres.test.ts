import { afterAll, beforeAll, describe } from "vitest";
import { backupContract } from "./backup-contract";
import { contentsContract } from "./contents-contract";
import { storeContract } from "./contract";
import { type Cluster, postgresPrograms, query, startCluster } from "./postgres-cluster";
import { sqliteTrials } from "./sqlite-trial";
import type { Trial } from "./trial";

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

  const postgresTrial = async (): Promise<Trial> => {
    const url = await cluster.newDatabase();
    return { location: { kind: "postgres", url }, raw: (sql) => query(url, sql) };
  };
  storeContract(postgresTrial);
  contentsContract(postgresTrial);
  describe("a backup", () => backupContract(postgresTrial, postgresTrial));
  describe("a backup of SQLite", () => backupContract(sqliteTrials(), postgresTrial));
});
