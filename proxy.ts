import { randomBytes } from "node:crypto";
import { type NextRequest, NextResponse } from "next/server";
import { isLoopbackHost, isSameOrigin } from "#lib/access";
import { attachmentLimits } from "#lib/attachment";
import { installation } from "./app/_data/installation";
import { givesFile, takesFile } from "./app/_file-addresses";
import { pathHeader } from "./app/_path-header";

const megabyte = 1024 * 1024;

/** Bytes a request may carry. Besides files that are kept, the largest thing sent is one project as a file. */
const bodyLimit = (path: string): number => (takesFile(path) ? attachmentLimits.fileBytes : megabyte);

/**
 * What a file that somebody sent may do where a browser shows it: nothing. It runs in a sandbox without scripts, forms or
 * an origin, loads nothing and stands in no frame. The browser's own PDF viewer works in it.
 */
const filePolicy = [
  "sandbox",
  "default-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/**
 * What a page may load and do. The nonce is Next's key to its own scripts and is new with every answer.
 * Inline style attributes are refused, as a text that reaches a page could otherwise redraw it.
 * While developing, React needs eval and the error overlay brings its own styles.
 * @source W3C Content Security Policy Level 3
 */
function contentSecurityPolicy(nonce: string): string {
  const developing = process.env.NODE_ENV === "development";
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${developing ? " 'unsafe-eval'" : ""}`,
    "script-src-attr 'none'",
    developing ? "style-src 'self' 'unsafe-inline'" : `style-src 'self' 'nonce-${nonce}'`,
    developing ? "style-src-attr 'unsafe-inline'" : "style-src-attr 'none'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'", // keeps the page for the field open without a connection
    "frame-src 'none'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

/** The host under which a shared server is reached; null where there is none but this machine. */
function ownHost(): string | null {
  const installed = installation();
  return installed.mode === "shared" ? new URL(installed.address).host : null;
}

/** Browsers that came once by an encrypted connection come by no other for a year. @source RFC 6797 */
function encryptedFromNowOn(response: NextResponse): NextResponse {
  const installed = installation();
  if (installed.mode === "shared" && installed.address.startsWith("https:"))
    response.headers.set("strict-transport-security", "max-age=31536000");
  return response;
}

function refusal(status: number, sentence: string): NextResponse {
  return new NextResponse(`${sentence}\n`, {
    status,
    headers: {
      "content-type": "text/plain; charset=utf-8",
      "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
      "cache-control": "no-store",
    },
  });
}

/** Why a request is not served, or nothing where it may pass. */
function refusalFor(request: NextRequest): NextResponse | undefined {
  const { headers } = request;
  const host = headers.get("host");
  // A foreign name that resolves to this machine would make the browser treat a stranger's page as ours.
  if (!isLoopbackHost(host ?? "") && host?.toLowerCase() !== ownHost())
    return refusal(
      421,
      ownHost() === null
        ? "Evenfield answers under this machine's own address only, such as http://127.0.0.1:3000."
        : "Evenfield does not answer under this address.",
    );
  if (request.method === "GET" || request.method === "HEAD") return undefined;
  if (!isSameOrigin({ origin: headers.get("origin"), host, secFetchSite: headers.get("sec-fetch-site") }))
    return refusal(
      403,
      "This change was sent from another site, so nothing was changed. Send it from Evenfield's own page.",
    );
  const announced = headers.get("content-length");
  if (announced === null && headers.has("transfer-encoding"))
    return refusal(411, "The length of what was sent was not announced. Send it with a Content-Length header.");
  const limit = bodyLimit(request.nextUrl.pathname);
  if (Number(announced) > limit)
    return refusal(
      413,
      `What was sent is larger than ${limit / megabyte} MB, so it was not read. Send a smaller file.`,
    );
  return undefined;
}

/** Every request passes here first; there is no matcher, so nothing is left out. */
export function proxy(request: NextRequest): NextResponse {
  const refused = refusalFor(request);
  if (refused) return refused;
  const headers = new Headers(request.headers);
  headers.set(pathHeader, request.nextUrl.pathname);
  if (givesFile(request.nextUrl.pathname)) {
    const response = NextResponse.next({ request: { headers } });
    response.headers.set("content-security-policy", filePolicy);
    return encryptedFromNowOn(response);
  }
  const policy = contentSecurityPolicy(randomBytes(16).toString("base64"));
  headers.set("content-security-policy", policy); // Next reads the nonce from here
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("content-security-policy", policy);
  return encryptedFromNowOn(response);
}
