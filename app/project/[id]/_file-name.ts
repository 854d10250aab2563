/** A name that every file system takes: small letters, digits and hyphens of the texts, then the ending. */
export function fileName(parts: readonly string[], ending: string): string {
  const plain = parts
    .join(" ")
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
  return `${plain === "" ? "project" : plain}.${ending}`;
}

/** A file to be saved, never kept by caches: it is the project as it stands now. */
export const download = (body: BodyInit, name: string, type: string): Response =>
  new Response(body, {
    headers: {
      "content-type": type,
      "content-disposition": `attachment; filename="${name}"`,
      "cache-control": "no-store",
    },
  });

/** The answer where nothing of that address stands. */
export const notHere = (what: string): Response =>
  new Response(`There is no ${what} at this address.\n`, {
    status: 404,
    headers: { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" },
  });
