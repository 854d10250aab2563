import { printedCloseoutFacts, printedWarrantyFacts, promisedCsv } from "#lib/document";
import { plainDate } from "#lib/quantity";
import { registerLine, startingContract } from "#lib/submittal";
import { readersUnits } from "../../../../../_units";
import { download, fileName, notHere } from "../../../_file-name";
import { printedDownload, printedFormat } from "../../../_printed-download";
import { loadRows } from "../../_rows/load-rows";

/** “promised.csv”, or the facts for a warranty notice or the closeout report as DOCX or PDF. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/promised/files/[name]">,
): Promise<Response> {
  const { id, name } = await params;
  const loaded = await loadRows(id, await readersUnits());
  if (loaded === null) return notHere("project");
  const { told, bid, project } = loaded;
  const { brief, submittals = [], contract = startingContract } = project;
  if (name === "promised.csv")
    return download(promisedCsv(told), fileName(["promised", brief.name], "csv"), "text/csv; charset=utf-8");
  const [, facts, ending = ""] = /^(warranty-facts|closeout-facts)\.(docx|pdf)$/.exec(name) ?? [];
  const format = printedFormat(ending);
  if (facts === undefined || format === null) return notHere("file");
  const today = plainDate(new Date().toISOString().slice(0, 10));
  const frame = {
    ...{ project: brief.name, owner: brief.owner, notice: brief.notice, date: today },
    bid: bid === null ? "" : `Bid ${bid.letter}`,
    dateInWords: new Date(`${today}T00:00:00Z`).toLocaleDateString("en-US", { dateStyle: "long", timeZone: "UTC" }),
  };
  const register = submittals.map((item) => registerLine(item, today, contract.reviewDays));
  const printed =
    facts === "warranty-facts" ? printedWarrantyFacts(told, frame) : printedCloseoutFacts(told, register, frame);
  return printedDownload(printed, format, fileName([facts, brief.name], format));
}
