import { boardPaper, printedPaper } from "#lib/document";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { fileName, notHere } from "../../_file-name";
import { printedDownload, printedFormat } from "../../_printed-download";

/** The board's paper as a file: ?as=pdf or ?as=docx. */
export async function GET(
  request: Request,
  { params }: RouteContext<"/project/[id]/recommendation/paper">,
): Promise<Response> {
  const [loaded, units] = await Promise.all([loadEvaluation((await params).id), readersUnits()]);
  if (loaded === null) return notHere("project");
  const format = printedFormat(new URL(request.url).searchParams.get("as"));
  if (format === null) return notHere("file");
  const { project, evaluation, ownersWords } = loaded;
  const { name, owner, notice } = project.brief;
  const date = new Date().toISOString().slice(0, 10);
  const paper = printedPaper(boardPaper(project, evaluation, ownersWords, units), {
    project: name,
    owner,
    notice,
    date,
    procedure: loaded.procedure,
    keptSince: loaded.summary.createdAt,
  });
  return printedDownload(paper, format, fileName(["recommendation", name], format));
}
