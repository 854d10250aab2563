import { chromium, type Page } from "@playwright/test";
import type { ProjectFile } from "#lib/evaluation";
import type { Comparison, WeightChoice } from "#lib/robustness";
import demonstration from "../../app/_demo/demonstration-project.json";
import { findChromium } from "../tools.mjs";
import { address, served } from "./served";

/** One order of a page to its worker: milliseconds from starting the worker to its outcome, and reports on the way. */
export type WorkerRun = Readonly<{ milliseconds: number; reports: number }>;

export type RankWorker = Readonly<{
  /** Runs one question as the page does, in a worker of its own. */
  run: (comparison: Comparison, weights: WeightChoice, draws: number) => Promise<WorkerRun>;
  /** Milliseconds from pressing Cancel in the page until it says that nothing was kept, a million draws on the way. */
  cancelled: () => Promise<number>;
}>;

/** The address of the worker that the page itself starts: a classic script, as the build makes it. */
async function workerOf(page: Page): Promise<string> {
  const started = page.waitForEvent("worker");
  await page.getByRole("combobox", { name: "Sets of weights" }).selectOption("10,000");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  const url = (await started).url();
  await page.getByText(/^Drawn 10,000 sets of weights/).waitFor();
  return url;
}

const runIn = (page: Page, url: string, comparison: Comparison, weights: WeightChoice, draws: number) =>
  page.evaluate(
    ([address, order]) =>
      new Promise<WorkerRun>((done, failed) => {
        let reports = 0;
        const start = performance.now();
        const worker = new Worker(address);
        worker.onerror = ({ message }) => failed(new Error(message));
        worker.onmessage = ({ data }) => {
          if (data.kind === "progress") reports += 1;
          else if (data.kind === "failed") failed(new Error(data.message));
          else {
            done({ milliseconds: performance.now() - start, reports });
            worker.terminate();
          }
        };
        worker.postMessage(order);
      }),
    [url, { comparison, questions: [{ weights, seed: 1, draws }] }] as const,
  );

async function cancelledIn(page: Page): Promise<number> {
  await page.getByRole("combobox", { name: "Sets of weights" }).selectOption("1,000,000");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await page.getByRole("progressbar", { name: "Sets of weights drawn" }).waitFor();
  return page.evaluate(
    () =>
      new Promise<number>((done, failed) => {
        const cancel = [...document.querySelectorAll("button")].find(({ textContent }) => textContent === "Cancel");
        if (cancel === undefined) return failed(new Error("nothing to cancel"));
        const start = performance.now();
        const seen = new MutationObserver(() => {
          if (!document.body.textContent.includes("Cancelled. Nothing was kept.")) return;
          seen.disconnect();
          done(performance.now() - start);
        });
        seen.observe(document.body, { subtree: true, childList: true, characterData: true });
        cancel.click();
      }),
  );
}

/** Hands over the worker of the built page in a Chromium; null where none is found. */
export async function withRankWorker<Outcome>(work: (worker: RankWorker) => Promise<Outcome>): Promise<Outcome | null> {
  const found = await findChromium();
  if (found.kind === "missing") return null;
  return served(demonstration as unknown as ProjectFile, async (project) => {
    const browser = await chromium.launch({
      ...(found.path ? { executablePath: found.path } : {}),
      args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
    });
    try {
      const page = await browser.newPage();
      await page.goto(`${address}/project/${project}/evaluation/robustness`);
      const url = await workerOf(page);
      return await work({
        run: (comparison, weights, draws) => runIn(page, url, comparison, weights, draws),
        cancelled: () => cancelledIn(page),
      });
    } finally {
      await browser.close();
    }
  });
}
