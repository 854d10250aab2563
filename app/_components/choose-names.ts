"use server";
import { revalidatePath } from "next/cache";
import { cookies } from "next/headers";
import { namesCookie } from "../_names";

const aYear = 365 * 24 * 3600;

/** Remembers in a cookie whether the reader sees bidders by name, so that every page does alike. */
export async function chooseNames(form: FormData): Promise<void> {
  const names = form.get("names") === "hidden" ? "hidden" : "shown";
  (await cookies()).set(namesCookie, names, { httpOnly: true, sameSite: "strict", maxAge: aYear, path: "/" });
  revalidatePath("/", "layout");
}
