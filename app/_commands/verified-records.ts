import {
  explainContentFault,
  explainRecordFault,
  explainSetBack,
  type Location,
  openStore,
  unreadBodies,
} from "#lib/store";

/** Verifies record and kept files of every project, bodies as stored and unparsed, and says so. True where all hold. */
export async function verifiedRecords(location: Location): Promise<boolean> {
  const store = await openStore(location, { schemas: unreadBodies });
  const projects = [...(await store.projects.list()), ...(await store.projects.listRemoved())];
  const where = location.kind === "sqlite" ? location.folder : "the PostgreSQL database";
  console.log(`${projects.length} ${projects.length === 1 ? "project" : "projects"} in ${where}`);
  let doAllHold = true;
  const broken = (what: string, fault: string) => {
    doAllHold = false;
    console.log(`broken  ${what}: ${fault}`);
  };
  for (const { id, name } of projects) {
    const what = `${id}  ${name}`;
    const verdict = await store.record.verify(id);
    if (verdict?.kind === "intact") {
      console.log(`intact  ${what}: ${verdict.entries} entries, head ${verdict.head}`);
      if (verdict.setBack.length > 0) console.log(`note    ${what}: ${explainSetBack(verdict.setBack)}`);
    } else broken(what, verdict ? explainRecordFault(verdict.fault) : "The project is gone.");
    for (const fault of await store.contents.verify(id)) broken(what, explainContentFault(fault));
  }
  await store.close();
  return doAllHold;
}
