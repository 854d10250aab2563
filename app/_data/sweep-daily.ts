import { errorFacts } from "#lib/log";
import { environmentPeople } from "#lib/store";
import { installation } from "./installation";
import { log } from "./log";

const aMinute = 60_000;
const aDay = 24 * 60 * aMinute;

/** Deletes what has served, a minute after the start and once a day; several instances may do so at the same time. */
export function sweepDaily(): void {
  const installed = installation();
  if (installed.mode === "local") return;
  const once = async () => {
    try {
      const { secret, address } = installed;
      const people = await environmentPeople({ secret, address });
      log("swept", await people.sweep());
    } catch (problem) {
      log("sweep-failed", errorFacts(problem)); // the database may be away; tomorrow is another day
    }
  };
  setTimeout(() => {
    void once();
    setInterval(() => void once(), aDay).unref();
  }, aMinute).unref();
}
