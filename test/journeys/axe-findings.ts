import AxeBuilder from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** The tags of axe for WCAG 2.2, level AA. */
export const standards = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** No page has a frame, so axe need not gather from frames in a page of its own; only what it finds fault with is told. */
export async function axeFindings(page: Page, choose: (axe: AxeBuilder) => AxeBuilder): Promise<readonly string[]> {
  expect(await page.locator("iframe, frame").count()).toBe(0);
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ["violations"] });
  const { violations } = await choose(axe).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
}
