/** The process answers; nothing is said of the database. */
export const GET = (): Response =>
  new Response("alive\n", { headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" } });
