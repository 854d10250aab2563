// Brings the tables of the store up to date, making the store where there is none yet.
import { environmentLocation, openPeople, openStore, type SignInSettings, unreadBodies } from "#lib/store";
import { installation } from "../_data/installation";

/** As long as nobody administers this server, its log holds a link by which the first owner comes in. */
async function tellFirstOwner(settings: SignInSettings): Promise<void> {
  const people = await openPeople(environmentLocation(), settings);
  const token = await people.accounts.firstOwnerToken();
  await people.close();
  if (token !== null)
    console.log(
      `Nobody administers this server yet. Whoever opens this link within a day becomes its first owner:\n${settings.address}/come-in/${token}`,
    );
}

const location = environmentLocation();
try {
  const store = await openStore(location, { schemas: unreadBodies });
  await store.close();
  const installed = installation();
  if (installed.mode === "shared") await tellFirstOwner(installed);
} catch (problem) {
  // The address of a database may hold a password, so it is not repeated here.
  const place = location.kind === "sqlite" ? `the folder ${location.folder}` : "the database that DATABASE_URL names";
  console.error(`The store in ${place} could not be opened: ${problem instanceof Error ? problem.message : problem}`);
  process.exitCode = 1;
}
