import { type Browser, type Page, test as plain } from "@playwright/test";
import { documentSchemas } from "#lib/evaluation";
import { openStore, type Store } from "#lib/store";

type OfEachTest = {
  /** What a page complained of in its console or threw; looked at when the test ends. Take out what is expected. */
  complaints: string[];
};
type OfEachWorker = {
  /** The store behind the pages, for laying out a project of one's own. */
  store: Store<typeof documentSchemas>;
};

/** A test that also fails where a page throws, or logs an error such as a refused script or style. */
export const test = plain.extend<OfEachTest, OfEachWorker>({
  complaints: [
    async ({ page }, use) => {
      const complaints: string[] = [];
      page.on("pageerror", (problem) => complaints.push(problem.message));
      page.on("console", (message) => {
        if (message.type() === "error") complaints.push(message.text());
      });
      await use(complaints);
      plain.expect(complaints, "what the pages complained of").toEqual([]);
    },
    { auto: true },
  ],
  store: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the names of fixtures from this pattern
    async ({}, use) => {
      const folder = process.env.EVENFIELD_JOURNEYS_DATA;
      if (!folder) throw new Error("EVENFIELD_JOURNEYS_DATA names no folder; run journeys by npm run test:journeys.");
      const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
      await use(store);
      await store.close();
    },
    { scope: "worker" },
  ],
});

export { expect } from "@playwright/test";

/** Opens a demonstration project of one's own and gives its address, "/project/…". */
export async function demonstration(browser: Browser): Promise<string> {
  const page = await browser.newPage();
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await page.waitForURL(/\/project\/[^/]+\/side-by-side$/);
  const address = new URL(page.url()).pathname.replace(/\/side-by-side$/, "");
  await page.close();
  return address;
}

/** Starts an empty project from the first page; its brief is open then. */
export async function startProject(page: Page, name: string): Promise<void> {
  await page.goto("/");
  await page.getByLabel("Name of the project").fill(name);
  await page.getByLabel("Owner").fill("Test district");
  await page.getByRole("button", { name: "Start an empty project" }).click();
  await plain.expect(page.getByRole("heading", { level: 1, name: "Brief" })).toBeVisible();
}

/** Follows the contents of a project to one of its pages. */
export async function toPage(page: Page, name: string): Promise<void> {
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name, exact: true }).click();
  await plain.expect(page.getByRole("heading", { level: 1, name, exact: true })).toBeVisible();
}
