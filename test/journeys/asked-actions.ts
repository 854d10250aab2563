import { readFileSync } from "node:fs";
import { z } from "zod";
import { sharedAddress } from "./shared-server";

/** What the build knows of server actions: under which id each is called, and where it stands. */
const manifest = z
  .object({ node: z.record(z.string(), z.object({ filename: z.string(), exportedName: z.string() })) })
  .parse(JSON.parse(readFileSync(".next/server/server-reference-manifest.json", "utf8")));

const ids = new Map(Object.entries(manifest.node).map(([id, { exportedName }]) => [exportedName, id]));

/** The names of all actions of this build. */
export const builtActions: readonly string[] = [...ids.keys()].toSorted();

/** React reads a text that begins with “$” as a reference, unless it begins with two. */
const escaped = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value ?? null), (_, held) =>
    typeof held === "string" && held.startsWith("$") ? `$${held}` : held,
  );

/**
 * Calls a server action as a page would, without a page: arguments in the form that React sends them, a form among them
 * by its fields. Redirects are not followed.
 */
export async function askAction(
  name: string,
  args: readonly unknown[],
  { cookie, from, address = sharedAddress }: Readonly<{ cookie: string; from: string; address?: string }>,
): Promise<Readonly<{ status: number; text: string; ledTo: string }>> {
  const id = ids.get(name);
  if (id === undefined) throw new RangeError(`no action ${name}`);
  const body = new FormData();
  const root = args.map((arg, index) => {
    if (!(arg instanceof FormData)) return escaped(arg);
    const form = (index + 1).toString(16);
    for (const [field, value] of arg.entries()) body.append(`_${form}_${field}`, value);
    return `$K${form}`;
  });
  body.append("0", JSON.stringify(root));
  const answer = await fetch(`${address}${from}`, {
    method: "POST",
    body,
    redirect: "manual",
    headers: {
      ...{ "next-action": id, accept: "text/x-component", origin: address, "sec-fetch-site": "same-origin" },
      ...(cookie === "" ? {} : { cookie }),
    },
  });
  const ledTo = answer.headers.get("x-action-redirect") ?? answer.headers.get("location") ?? "";
  return { status: answer.status, text: await answer.text(), ledTo };
}
