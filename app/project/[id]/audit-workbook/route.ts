import { auditWorkbook } from "#lib/document";
import { loadEvaluation } from "../../../_data/load-project";
import { download, fileName, notHere } from "../_file-name";

/** Costs and scores of the project as a workbook that works them out by itself. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/audit-workbook">,
): Promise<Response> {
  const loaded = await loadEvaluation((await params).id);
  if (loaded === null) return notHere("project");
  const { project, evaluation } = loaded;
  return download(
    new Uint8Array(await auditWorkbook(project, evaluation)),
    fileName(["audit workbook", project.brief.name], "xlsx"),
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  );
}
