import { gzipSync } from "node:zlib";
import type { ProjectFile } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";
import { address, served } from "./served";

/** Bytes of gzipped first-load script and of the gzipped page, and the median time to the whole page. */
export type PageWeight = Readonly<{ name: string; script: number; html: number; milliseconds: number }>;

const visits = 15;
const readingPages = ["side-by-side", "infill", "hardness", "cost", "evaluation", "recommendation"];
const writingPages = ["brief", "requirements", "bids", "bids/bid-a"];

/** Scripts a modern browser fetches for a page: what the page names, less what only old browsers take. */
const scriptsOf = (html: string): readonly string[] => [
  ...new Set(
    [...html.matchAll(/<script[^>]*\ssrc="([^"]+)"[^>]*>/g)].flatMap(([tag, source]) =>
      source === undefined || /\snomodule/i.test(tag) ? [] : [source.replaceAll("&amp;", "&")],
    ),
  ),
];

async function weigh(name: string, path: string): Promise<PageWeight> {
  const times: number[] = [];
  let html = "";
  for (let visit = 0; visit < visits; visit += 1) {
    const start = performance.now();
    html = await (await fetch(`${address}${path}`)).text();
    times.push(performance.now() - start);
  }
  let script = 0;
  for (const source of scriptsOf(html)) {
    const answer = await fetch(`${address}${source}`);
    script += gzipSync(new Uint8Array(await answer.arrayBuffer()), { level: 6 }).length;
  }
  const milliseconds = times.toSorted((a, b) => a - b)[Math.floor(visits / 2)] ?? Number.NaN;
  return { name, script, html: gzipSync(html).length, milliseconds };
}

/** The weight of every page of the demonstration; the empty page is the one for unknown addresses. */
export const measurePages = (): Promise<Readonly<{ empty: PageWeight; pages: readonly PageWeight[] }>> =>
  served(demonstration as unknown as ProjectFile, async (project) => {
    const empty = await weigh("empty page", "/no-such-page");
    const pages: PageWeight[] = [];
    for (const page of [...readingPages, ...writingPages]) pages.push(await weigh(page, `/project/${project}/${page}`));
    return { empty, pages };
  });
