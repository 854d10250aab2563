import { cookies } from "next/headers";
import type { UnitSystem } from "#lib/quantity";

export const unitsCookie = "units";

/** The unit system this reader chose; US customary until somebody chooses. */
export async function readersUnits(): Promise<UnitSystem> {
  return (await cookies()).get(unitsCookie)?.value === "metric" ? "metric" : "us";
}
