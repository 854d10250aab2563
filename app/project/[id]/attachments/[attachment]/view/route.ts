import { handedOut } from "../../_files/handed-out";

/** The file in the browser's own viewer, in a sandbox: see the policy for files in proxy.ts. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/project/[id]/attachments/[attachment]/view">,
): Promise<Response> {
  return handedOut(await params, "inline");
}
