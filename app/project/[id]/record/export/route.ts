import { recordLines } from "#lib/store";
import { loadProject } from "../../../../_data/load-project";
import { projectStore } from "../../../../_data/store";
import { download, fileName, notHere } from "../../_file-name";

/** The whole record as JSON lines, to be verified by the command of the README or by a script of the reader's own. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/record/export">,
): Promise<Response> {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) return notHere("project");
  const entries = await (await projectStore()).record.list(id);
  return download(
    recordLines(id, entries),
    fileName(["record", loaded.documents.brief.body.name], "jsonl"),
    "application/jsonl; charset=utf-8",
  );
}
