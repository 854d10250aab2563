import { type Browser, chromium, type Page } from "@playwright/test";
import { findChromium } from "../tools.mjs";
import { manyBidsFile } from "./many-bids";
import { address, served } from "./served";

/** What a reader does with the table, timed from the press to the next frame that is painted. */
const interactions = [
  "only gaps",
  "all rows",
  "hide a bid",
  "show it again",
  "pin",
  "unpin",
  "move",
  "close a group",
  "open it",
] as const;
export type Interaction = (typeof interactions)[number];

/** Medians in milliseconds. */
export type TableTimes = Readonly<{ interactive: number; each: Readonly<Record<Interaction, number>> }>;

export type LargeTable = Readonly<{
  /** Bytes of the page as it is sent, not compressed, and gzipped by the server. */
  html: number;
  cells: number;
  ours: TableTimes;
  /** The same table of the same texts as plain HTML, with a few lines of script that do the same to it. */
  plain: TableTimes;
}>;

const rounds = 7;
const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

type Presses = Readonly<Record<Interaction, string>>;

/** Each interaction as the control that does it: a click, or a choice in a list written as `select=value`. */
const oursPresses: Presses = {
  "only gaps": "input[value=gaps]",
  "all rows": "input[value=all]",
  "hide a bid": "input[name=bid][value=bid-5]",
  "show it again": "input[name=bid][value=bid-5]",
  pin: "select[name=pin]=bid-7",
  unpin: "select[name=pin]=",
  move: "button[value='right.bid-3']",
  "close a group": "tbody:nth-of-type(3) button[aria-expanded]",
  "open it": "tbody:nth-of-type(3) button[aria-expanded]",
};

const plainPresses = Object.fromEntries(
  interactions.map((name) => [name, `button[data-does='${name}']`]),
) as unknown as Presses;

/** The time from a press until a frame after it was painted, in the page itself. */
const timedPress = (page: Page, press: string): Promise<number> =>
  page.evaluate(
    ([selector = "", value]) =>
      new Promise<number>((done) => {
        const control = document.querySelector<HTMLElement>(selector);
        if (control === null) throw new Error(`nothing at ${selector}`);
        const start = performance.now();
        if (value === undefined) control.click();
        else {
          (control as HTMLSelectElement).value = value;
          control.dispatchEvent(new Event("change", { bubbles: true }));
        }
        // a task that is posted in a frame runs once the frame was laid out and painted
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => done(performance.now() - start);
          port2.postMessage(null);
        });
      }),
    /^select/.test(press) ? [press.slice(0, press.lastIndexOf("=")), press.slice(press.lastIndexOf("=") + 1)] : [press],
  );

async function timesOf(page: Page, presses: Presses, interactive: number): Promise<TableTimes> {
  const times = Object.fromEntries(interactions.map((name) => [name, [] as number[]])) as Record<Interaction, number[]>;
  for (let round = 0; round < rounds; round += 1)
    for (const name of interactions) times[name].push(await timedPress(page, presses[name]));
  const each = Object.fromEntries(interactions.map((name) => [name, median(times[name])]));
  return { interactive, each: each as Record<Interaction, number> };
}

/** From asking for the page until a press changes the table. */
async function untilInteractive(page: Page, path: string): Promise<number> {
  const start = performance.now();
  await page.goto(path, { waitUntil: "commit", timeout: 120_000 });
  await page.waitForFunction(
    () => {
      const button = document.querySelector("tbody button[aria-expanded=true]");
      return button !== null && Object.keys(button).some((key) => key.startsWith("__reactProps"));
    },
    undefined,
    { polling: 10, timeout: 120_000 },
  );
  return performance.now() - start;
}

/** Every text of the table in plain cells, and the same things done to it by hand. */
const plainPage = (rows: readonly (readonly string[])[]): string => {
  const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  const line = (cells: readonly string[], tag: string) =>
    `<tr>${cells.map((cell, at) => (at === 0 ? `<th>${escaped(cell)}</th>` : `<${tag}>${escaped(cell)}</${tag}>`)).join("")}</tr>`;
  const [head = [], ...body] = rows;
  return `<!doctype html><title>Plain</title><style>table{table-layout:fixed;width:100%}th,td{width:11rem;vertical-align:top}[hidden]{display:none}</style>
${interactions.map((name) => `<button data-does='${name}'>${name}</button>`).join("")}
<table><thead>${line(head, "th")}</thead><tbody>${body.map((cells) => line(cells, "td")).join("")}</tbody></table>
<script>
const rows=[...document.querySelectorAll("tr")];
const body=rows.slice(1);
const hideRows=(hides)=>body.forEach((row,at)=>{row.hidden=hides(at)});
const column=(at,hidden)=>rows.forEach((row)=>{row.children[at].hidden=hidden});
const put=(from,to)=>rows.forEach((row)=>{row.insertBefore(row.children[from],row.children[to])});
const does={"only gaps":()=>hideRows((at)=>at%4!==0),"all rows":()=>hideRows(()=>false),"hide a bid":()=>column(6,true),"show it again":()=>column(6,false),
pin:()=>put(8,1),unpin:()=>put(1,9),move:()=>put(5,4),"close a group":()=>hideRows((at)=>at>10&&at<30),"open it":()=>hideRows(()=>false)};
document.addEventListener("click",({target})=>does[target.dataset.does]?.());
</script>`;
};

const textsOf = (page: Page): Promise<string[][]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLTableRowElement>("main table tr")]
      .map((row) => [...row.cells].map((cell) => cell.textContent ?? ""))
      .filter((cells) => cells.length > 2),
  );

async function measured(browser: Browser, path: string): Promise<Pick<LargeTable, "cells" | "ours" | "plain">> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const loads: number[] = [];
  for (let visit = 0; visit < 3; visit += 1) loads.push(await untilInteractive(page, path));
  await page.waitForLoadState("networkidle");
  const texts = await textsOf(page);
  const ours = await timesOf(page, oursPresses, median(loads));
  await page.goto("about:blank");
  const start = performance.now();
  await page.setContent(plainPage(texts), { waitUntil: "load" });
  const plain = await timesOf(page, plainPresses, performance.now() - start);
  await page.close();
  return { cells: texts.slice(1).reduce((sum, cells) => sum + cells.length - 1, 0), ours, plain };
}

/** The table of many bids as it is served and used; null where no browser is found. */
export async function measureLargeTable(bids: number, claims: number): Promise<LargeTable | null> {
  const found = await findChromium();
  if (found.kind === "missing") return null;
  return served(manyBidsFile(bids, claims), async (project) => {
    const path = `${address}/project/${project}/side-by-side`;
    const html = Buffer.byteLength(await (await fetch(path)).text());
    const browser = await chromium.launch({
      ...(found.path ? { executablePath: found.path } : {}),
      args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
    });
    try {
      return { html, ...(await measured(browser, path)) };
    } finally {
      await browser.close();
    }
  });
}
