import { blankBidForm } from "#lib/document";
import { wantedProperties } from "#lib/evaluation";
import { loadProject } from "../../../_data/load-project";
import { download, fileName, notHere } from "../_file-name";

/** The blank bid form of the project as a workbook. */
export async function GET(_request: Request, { params }: RouteContext<"/project/[id]/bid-form">): Promise<Response> {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) return notHere("project");
  const { brief, requirements } = loaded.project;
  const form = await blankBidForm({
    owner: { key: id, name: brief.name, owner: brief.owner },
    currency: brief.money.currency,
    wanted: wantedProperties(requirements.criteria),
    ownMaterials: brief.ownMaterials,
  });
  return download(
    new Uint8Array(form),
    fileName(["bid form", brief.name], "xlsx"),
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  );
}
