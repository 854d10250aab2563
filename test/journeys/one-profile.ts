import type { BrowserContext } from "@playwright/test";
import { test as plain } from "./fixtures";

/**
 * Tests that only open pages and look at them: each gets a page of its own, in one profile of the browser a worker, so
 * that scripts are fetched and compiled once. Not for tests that choose or type anything that a page remembers.
 */
export const test = plain.extend<object, { profile: BrowserContext }>({
  profile: [
    async ({ browser }, use, { project }) => {
      const { baseURL, locale } = project.use;
      const profile = await browser.newContext({ baseURL: baseURL ?? "", locale: locale ?? "" });
      await use(profile);
      await profile.close();
    },
    { scope: "worker" },
  ],
  context: ({ profile }, use) => use(profile),
  page: async ({ context }, use) => {
    const page = await context.newPage();
    await use(page);
    await page.close();
  },
});
