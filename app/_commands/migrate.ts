// Brings the tables of the store up to date, making the store where there is none yet.
import { environmentLocation, openStore, unreadBodies } from "#lib/store";

const location = environmentLocation();
try {
  const store = await openStore(location, { schemas: unreadBodies });
  await store.close();
} catch (problem) {
  // The address of a database may hold a password, so it is not repeated here.
  const place = location.kind === "sqlite" ? `the folder ${location.folder}` : "the database that DATABASE_URL names";
  console.error(`The store in ${place} could not be opened: ${problem instanceof Error ? problem.message : problem}`);
  process.exitCode = 1;
}
