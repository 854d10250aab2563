import type { DocumentKind } from "#lib/store";
import type { News } from "./news";

/** What an open page says of itself. */
export type Said = Readonly<
  | { does: "shows"; page: string; place: string; documents: readonly Readonly<{ kind: DocumentKind; id: string }>[] }
  | { does: "leaves"; page: string }
>;

const address = (project: string): string => `/project/${project}/together`;
const asJson = (said: Said): Blob => new Blob([JSON.stringify(said)], { type: "application/json" });

/** Says where a page is and hears the news; null where the server can’t be reached or does not answer this page any more. */
export async function askServer(project: string, said: Said): Promise<News | null> {
  try {
    const answer = await fetch(address(project), { method: "POST", body: asJson(said), redirect: "manual" });
    return answer.ok ? ((await answer.json()) as News) : null;
  } catch {
    return null;
  }
}

/** Says that a page is closed; the browser sends it even while it goes. */
export function sayGoodbye(project: string, page: string): void {
  navigator.sendBeacon(address(project), asJson({ does: "leaves", page }));
}
