import { openRelease, releaseCookie } from "../../../../_data/asker";
import { installation } from "../../../../_data/installation";

const day = 24 * 3600;

const gone = () =>
  new Response("This link opens nothing: it was taken back, its time is over, or it is not whole.\n", {
    status: 404,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
  });

/** Follows a link for the public: the browser keeps it for this project alone, and is led to what was released. */
export async function GET(
  _request: Request,
  { params }: RouteContext<"/released/[project]/[release]/[token]">,
): Promise<Response> {
  const { project, release: id, token } = await params;
  const installed = installation();
  if (installed.mode === "local") return gone();
  const release = await openRelease({ project, id, token });
  if (release === null) return gone();
  const seconds = Math.max(1, Math.min(30 * day, Math.ceil((Date.parse(release.endsAt) - Date.now()) / 1000)));
  const kept = [
    `${releaseCookie}=${project}.${id}.${token}`,
    `Path=/project/${project}`,
    `Max-Age=${seconds}`,
    "HttpOnly",
    "SameSite=Lax",
    ...(installed.address.startsWith("https:") ? ["Secure"] : []),
  ].join("; ");
  return new Response(null, {
    status: 303,
    headers: {
      location: `/project/${project}`,
      "set-cookie": kept,
      "cache-control": "no-store",
      "referrer-policy": "no-referrer",
    },
  });
}
