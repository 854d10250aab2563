import { download, fileName, notHere } from "../../../_file-name";
import { loadSection } from "../../_drafted/load-section";
import { printedFile } from "../../_drafted/printed-file";

/** The section, or what an addendum changes, as a file. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/specification/files/[name]">,
): Promise<Response> {
  const { id, name } = await params;
  const loaded = await loadSection(id);
  if (loaded === null) return notHere("project");
  const file = await printedFile(loaded, name, new Date().toISOString().slice(0, 10));
  if (file === null) return notHere("file");
  return download(
    file.bytes,
    fileName(["specification", file.name, loaded.project.brief.name], file.format),
    file.type,
  );
}
