/**
 * The service worker of the pages for the field, plain JavaScript as the browser gets it. It keeps a page that asks for
 * it together with its scripts, styles and fonts, one cache a page. A kept page is shown only where the server can't be
 * reached; everything that is sent goes to the server alone.
 */
export const workerScript = `
"use strict";
const prefix = "evenfield page ";
const isPage = (url) => /\\/field-tests\\/[^/]+\\/on-the-field$/.test(url.pathname);
const isAsset = (url) => url.pathname.startsWith("/_next/static/");

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

async function fetched(address) {
  const answer = await fetch(address, { credentials: "same-origin" });
  if (!answer.ok) throw new Error(address + " answered " + answer.status);
  return answer;
}

/** Keeps the page as the server gives it now, with what it names and what the open page has loaded. */
async function keep(address, loaded) {
  const page = await fetched(address);
  const text = await page.clone().text();
  const named = text.match(/\\/_next\\/static\\/[^"'\\\\\\s<>)]+/g) || [];
  const wanted = new Set([...named.map((path) => path.replaceAll("&amp;", "&")), ...loaded]);
  const cache = await caches.open(prefix + address);
  const missing = [];
  for (const asset of wanted) if (!(await cache.match(asset))) missing.push(asset);
  await Promise.all(missing.map(async (asset) => {
    const answer = await fetch(asset).catch(() => null);
    if (answer && answer.ok) await cache.put(asset, answer);
  }));
  await cache.put(address, page);
  for (const request of await cache.keys()) {
    const { pathname, search } = new URL(request.url);
    if (pathname !== address && !wanted.has(pathname + search)) await cache.delete(request);
  }
}

self.addEventListener("message", (event) => {
  const { address, loaded } = event.data || {};
  if (typeof address !== "string" || !Array.isArray(loaded)) return;
  const tell = (kept) => event.source && event.source.postMessage({ kept });
  event.waitUntil(keep(address, loaded).then(() => tell(true), () => tell(false)));
});

async function pageOrKept(request, url) {
  try {
    return await fetch(request);
  } catch (problem) {
    const kept = await caches.match(url.pathname);
    if (kept) return kept;
    throw problem;
  }
}

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (request.mode === "navigate" && isPage(url)) event.respondWith(pageOrKept(request, url));
  else if (isAsset(url)) event.respondWith(caches.match(request).then((kept) => kept || fetch(request)));
});
`;
