import { workerScript } from "./worker-script";

/** Served from this folder, so that it may look after the field tests of this project and nothing else. */
export const GET = (): Response =>
  new Response(workerScript, {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });
