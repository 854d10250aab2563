import { claimsCsv, claimsOfBidsCsv } from "#lib/document";
import { loadProject } from "../../../_data/load-project";
import { download, fileName, notHere } from "../_file-name";

const type = "text/csv; charset=utf-8";

/** The claims as comma-separated values: those of all bids, or of one that `bid` names. */
export async function GET(request: Request, { params }: RouteContext<"/project/[id]/claims">): Promise<Response> {
  const loaded = await loadProject((await params).id);
  if (loaded === null) return notHere("project");
  const { brief, bids } = loaded.documents;
  const wanted = new URL(request.url).searchParams.get("bid");
  if (wanted === null)
    return download(claimsOfBidsCsv(bids.map(({ body }) => body)), fileName(["claims", brief.body.name], "csv"), type);
  const bid = bids.find(({ id }) => id === wanted);
  if (bid === undefined) return notHere("bid");
  const { letter, claims } = bid.body;
  return download(claimsCsv(claims), fileName(["claims bid", letter, brief.body.name], "csv"), type);
}
