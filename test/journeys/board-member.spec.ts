import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./fixtures";

const comparison = (page: Page) => page.getByRole("table", { name: "Claims and derived figures of all bids" });
const row = (page: Page, name: RegExp) => comparison(page).getByRole("row", { name });
const figureOf = (bid: number, inRow: Locator) => inRow.getByRole("cell").nth(bid);

/** "All 159 rows." and "12 of 159 rows.": how many rows the table says it shows. */
async function rowsShown(page: Page): Promise<number> {
  const said = page.getByRole("status").filter({ hasText: /rows\.$/ });
  return Number(/\d+/.exec((await said.textContent()) ?? "")?.[0]);
}

test("a board member compares the bids, opens a working, and reads what the figures support", async ({ page }) => {
  test.slow();
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Side by side" })).toBeVisible();
  await expect(page.getByText(/^Invented for demonstration/).first()).toBeVisible();
  await expect(page.getByRole("heading", { name: "What stands out" })).toBeVisible();
  for (const letter of ["A", "B", "C", "D"])
    await expect(comparison(page).getByRole("columnheader", { name: new RegExp(`^Bid ${letter}\\b`) })).toBeVisible();

  const fallHeight = row(page, /^Critical fall height, ft ?Method:/);
  const stabilisingMass = row(page, /^Total stabilising mass/);
  const all = await rowsShown(page);
  await expect(fallHeight).toContainText("not shown");

  await page.getByRole("radio", { name: "Only differences" }).check();
  await expect(stabilisingMass).toBeVisible();
  const different = await rowsShown(page);
  expect(different).toBeLessThan(all);

  await page.getByRole("radio", { name: "Only gaps" }).check();
  await expect(stabilisingMass).toBeHidden();
  await expect(fallHeight).toBeVisible();
  const gaps = await rowsShown(page);
  expect(gaps).toBeGreaterThan(0);
  expect(gaps).toBeLessThan(all);
  for (const gap of await comparison(page)
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader") })
    .all()) {
    if ((await gap.getByRole("cell").count()) > 0) await expect(gap).toContainText("not shown");
  }

  await page.getByRole("radio", { name: "All rows" }).check();
  expect(await rowsShown(page)).toBe(all);

  // 380 ft × 212 ft × (6.5 + 3) lb/ft² = 765,320 lb, derived; × 0.45359237 kg/lb (NIST SP 811) = 347,143 kg
  const massOfA = figureOf(0, stabilisingMass);
  await expect(massOfA).toContainText("765,320 lb");
  await massOfA.getByRole("button", { name: "Show working of Total stabilising mass, bid A" }).click();
  await expect(massOfA.getByText(/^Source: /)).toBeVisible();
  await expect(massOfA.getByRole("term").first()).toBeVisible();
  await expect(massOfA).toContainText("80,560 ft²");

  await page.getByRole("button", { name: "Show metric" }).click();
  await expect(page.getByRole("button", { name: "Show US customary" })).toBeVisible();
  await expect(massOfA).toContainText("347,143 kg");

  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Recommendation" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Recommendation" })).toBeVisible();
  await expect(page.getByRole("heading", { name: /^The figures support bid C\./ })).toBeVisible();
});
