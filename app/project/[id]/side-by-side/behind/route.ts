import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { comparison } from "../_comparison/comparison";

/** One cell of the table with all that lies behind it: workings, what shows a statement, reasons and questions. */
export async function GET(request: Request, { params }: RouteContext<"/project/[id]/side-by-side/behind">) {
  const asked = new URL(request.url).searchParams;
  const loaded = await loadEvaluation((await params).id);
  const groups = loaded === null ? [] : comparison(loaded.project, loaded.evaluation, await readersUnits());
  const row = groups.flatMap(({ rows }) => rows).find(({ id }) => id === asked.get("row"));
  const cell = row?.cells.find(({ bid }) => bid === asked.get("bid"));
  const headers = { "cache-control": "no-store" };
  if (cell === undefined) return Response.json({ message: "The table has no such cell." }, { status: 404, headers });
  return Response.json(cell, { headers });
}
