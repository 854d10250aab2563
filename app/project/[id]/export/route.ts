import { projectFileOf } from "#lib/document";
import { loadProject } from "../../../_data/load-project";

/** A name that every file system takes: small letters, digits and hyphens of the project's own name. */
function fileName(project: string): string {
  const plain = project
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
  return `${plain === "" ? "project" : plain}.evenfield.json`;
}

/** The project as one file: text as entered, to be opened on another computer, compared or archived. */
export async function GET(_request: Request, { params }: RouteContext<"/project/[id]/export">): Promise<Response> {
  const loaded = await loadProject((await params).id);
  if (loaded === null) {
    return new Response("There is no project at this address.\n", {
      status: 404,
      headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
    });
  }
  const { brief, requirements, bids } = loaded.documents;
  const file = projectFileOf({
    brief: brief.body,
    requirements: requirements.body,
    bids: bids.map(({ id, body }) => ({ id, text: body })),
  });
  return new Response(`${JSON.stringify(file, null, 2)}\n`, {
    headers: {
      "content-type": "application/json; charset=utf-8",
      "content-disposition": `attachment; filename="${fileName(brief.body.name)}"`,
      "cache-control": "no-store",
    },
  });
}
