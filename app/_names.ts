import { cookies } from "next/headers";

export const namesCookie = "names";

/** Whether this reader sees who bids, or the letters alone. */
export async function readersNames(): Promise<"shown" | "hidden"> {
  return (await cookies()).get(namesCookie)?.value === "hidden" ? "hidden" : "shown";
}
