import { demonstration, expect, test } from "./fixtures";

test("an owner gives weights by an order of importance, and the scores follow", async ({ browser, page }) => {
  const address = await demonstration(browser);
  await page.goto(`${address}/requirements`);
  const weights = page.getByRole("region", { name: "Weights", exact: true }).first();
  await weights.getByLabel("How the weights come about").selectOption({ label: "An order of importance" });
  const cost = weights.getByLabel("Place of “Equivalent annual cost per area”");
  await expect(cost).toHaveValue("2");
  await cost.fill("first");
  await expect(cost).toHaveAccessibleDescription(/The place reads “first”; expected a whole number from 1/);
  await cost.fill("1");
  await weights.getByLabel("Place of “Impact level as new”").fill("2");
  await weights.getByLabel("Place of “Impact level in year 8”").fill("3");
  await expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);
  // rank order centroid of seven criteria: 0.3704 for the first (Barron and Barrett 1996)
  await expect(weights.getByRole("row", { name: /Equivalent annual cost per area/ })).toContainText("37 %");
  await expect(weights.getByRole("row", { name: /^Sum/ })).toContainText("100 %");

  await page.reload();
  await expect(weights.getByLabel("Place of “Impact level as new”")).toHaveValue("2");
  await page.goto(`${address}/evaluation`);
  const rooms = page.getByRole("table", { name: "How far each weight can move before another bid leads" });
  await expect(rooms.getByRole("row", { name: /Equivalent annual cost per area/ })).toContainText("37 %");
});
