/** The headers of a request that tell where it was made; null where it has none. */
export type OriginHeaders = Readonly<{ origin: string | null; host: string | null; secFetchSite: string | null }>;

/**
 * True if a request was made by one of our own pages. Browsers send Origin with every form and script request that
 * changes something and Sec-Fetch-Site with every request; pages cannot set either. A request with neither shows no
 * origin and counts as foreign.
 * @source Fetch Standard (Origin header); W3C Fetch Metadata Request Headers, section 2.4
 */
export function isSameOrigin({ origin, host, secFetchSite }: OriginHeaders): boolean {
  if (host === null || (origin === null && secFetchSite === null)) return false;
  if (secFetchSite !== null && secFetchSite !== "same-origin" && secFetchSite !== "none") return false;
  return origin === null || hostOf(origin) === host.toLowerCase();
}

/** Host and port as the Host header writes them; null for “null” and whatever else is no web origin. */
function hostOf(origin: string): string | null {
  const read = /^https?:\/\/([^/?#@\s]+)$/i.exec(origin);
  return read?.[1]?.toLowerCase() ?? null;
}
