"use server";
import { revalidatePath } from "next/cache";
import { cookies } from "next/headers";
import { unitsCookie } from "../_units";

const aYear = 365 * 24 * 3600;

/** Remembers the reader's units in a cookie, so that every page and document shows the same. */
export async function chooseUnits(form: FormData): Promise<void> {
  const units = form.get("units") === "metric" ? "metric" : "us";
  (await cookies()).set(unitsCookie, units, { httpOnly: true, sameSite: "strict", maxAge: aYear, path: "/" });
  revalidatePath("/", "layout");
}
