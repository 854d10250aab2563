import { auditWorkbook } from "#lib/document";
import { procedureSentences } from "#lib/procedure";
import { plainDate } from "#lib/quantity";
import { loadEvaluation } from "../../../_data/load-project";
import { download, fileName, notHere } from "../_file-name";

/** Costs and scores of the project as a workbook that works them out by itself. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/audit-workbook">,
): Promise<Response> {
  const loaded = await loadEvaluation((await params).id);
  if (loaded === null) return notHere("project");
  const { project, evaluation, procedure, summary } = loaded;
  const today = plainDate(new Date().toISOString().slice(0, 10));
  return download(
    new Uint8Array(await auditWorkbook(project, evaluation, today, procedureSentences(procedure, summary.createdAt))),
    fileName(["audit workbook", project.brief.name], "xlsx"),
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  );
}
