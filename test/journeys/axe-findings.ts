import { expect, type Page } from "@playwright/test";
import axe, { type RunOptions } from "axe-core";
import { isWholeWalk } from "./whole-walk";

/** The tags of axe for WCAG 2.2, level AA. */
export const standards = { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] } as const;

/** The same without the contrast of colours, for pages whose colours the whole walk looks at. */
export const standardsButColours = { ...standards, rules: { "color-contrast": { enabled: false } } } as const;

/** Only the colours: all that a dark scheme changes. */
export const colours = { runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block"] } } as const;

/** What axe finds fault with on a page, by rule. Its script is put into the page once, not for each question. */
export async function axeFindings(
  page: Page,
  asked: Readonly<{ runOnly?: unknown }> = standards,
): Promise<readonly string[]> {
  expect(await page.locator("iframe, frame").count(), "axe is asked in the page alone").toBe(0);
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  return page.evaluate(
    async (options) => {
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, options);
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
    },
    { resultTypes: ["violations"], ...asked } as RunOptions,
  );
}

/**
 * Nothing for axe to find, and nothing wider than 320 CSS pixels (WCAG 2.2, 1.4.10). Colours are looked at in the whole
 * walk; every day every-page.spec.ts has them on pages with every kind of part.
 */
export async function looksWell(page: Page): Promise<void> {
  await expect(page).toHaveTitle(/\S/); // it may come a moment after the page
  expect(await axeFindings(page, isWholeWalk ? standards : standardsButColours), page.url()).toEqual([]);
  const size = page.viewportSize() ?? { width: 1280, height: 720 };
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth), page.url()).toBeLessThanOrEqual(320);
  await page.setViewportSize(size);
}
