import { cookies, headers } from "next/headers";
import type { SignInCookie } from "#lib/store";
import { installation } from "./installation";

/** Where a request comes from, by the word of proxies that may be trusted; null where there are none. */
export async function placeOfRequest(): Promise<string | null> {
  const installed = installation();
  if (installed.mode === "local" || installed.proxies === 0) return null;
  const passed = ((await headers()).get("x-forwarded-for") ?? "").split(",").map((address) => address.trim());
  return passed.at(-installed.proxies) ?? null;
}

/** The browser of a request by its own word, cut to what a list of sign-ins can show. */
export const browserOfRequest = async (): Promise<string> => ((await headers()).get("user-agent") ?? "").slice(0, 200);

/** Lets the browser keep a sign-in. */
export async function keepSignIn({ name, value, secure, seconds }: SignInCookie): Promise<void> {
  (await cookies()).set(name, value, { httpOnly: true, sameSite: "lax", path: "/", secure, maxAge: seconds });
}

/** Lets the browser forget its sign-in. */
export async function forgetSignIn(): Promise<void> {
  const kept = await cookies();
  for (const { name } of kept.getAll()) if (/(?:^|-)evenfield\./.test(name)) kept.delete(name);
}
