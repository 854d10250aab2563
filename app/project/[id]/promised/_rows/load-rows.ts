import type { ToldRow } from "#lib/document";
import { type PromisedAgainstMeasured, promisedAgainstMeasured } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { rowFindings, startingContract } from "#lib/submittal";
import { loadProject } from "../../../../_data/load-project";

type Loaded = NonNullable<Awaited<ReturnType<typeof loadProject>>>;

/** Promised against measured of a stored project; null if there is none of that id. */
export async function loadRows(
  id: string,
  units: UnitSystem,
): Promise<(Loaded & Omit<PromisedAgainstMeasured, "rows"> & Readonly<{ told: readonly ToldRow[] }>) | null> {
  const loaded = await loadProject(id);
  if (loaded === null) return null;
  const { rows, ...rest } = promisedAgainstMeasured(loaded.project, units);
  const { sameWithin } = loaded.project.contract ?? startingContract;
  const told = rows.map((row) => ({ row, findings: rowFindings(row, { sameWithin: sameWithin.value, units }) }));
  return { ...loaded, ...rest, told };
}
