import { environmentLocation, explainContentFault, explainRecordFault, openStore, unreadBodies } from "#lib/store";

/** Verifies record and kept files of every project and ends with 1 if one does not hold. It looks at bodies as stored, unparsed. */
async function verifyRecords(): Promise<void> {
  const location = environmentLocation();
  const store = await openStore(location, { schemas: unreadBodies });
  const projects = [...(await store.projects.list()), ...(await store.projects.listRemoved())];
  const where = location.kind === "sqlite" ? location.folder : "the PostgreSQL database";
  console.log(`${projects.length} ${projects.length === 1 ? "project" : "projects"} in ${where}`);
  for (const { id, name } of projects) {
    const verdict = await store.record.verify(id);
    if (verdict?.kind === "intact") {
      console.log(`intact  ${id}  ${name}: ${verdict.entries} entries, head ${verdict.head}`);
    } else {
      process.exitCode = 1;
      console.log(`broken  ${id}  ${name}: ${verdict ? explainRecordFault(verdict.fault) : "The project is gone."}`);
    }
    for (const fault of await store.contents.verify(id)) {
      process.exitCode = 1;
      console.log(`broken  ${id}  ${name}: ${explainContentFault(fault)}`);
    }
  }
  await store.close();
}

await verifyRecords();
