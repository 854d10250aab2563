import { handedOut } from "../../_files/handed-out";

/** The file, to be saved. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/attachments/[attachment]/file">,
): Promise<Response> {
  return handedOut(await params, "attachment");
}
