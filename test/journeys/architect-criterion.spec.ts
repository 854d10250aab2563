import { expect, test } from "./fixtures";

test("an architect adds a criterion, sees its share, and is told how to write a mass per area", async ({ page }) => {
  test.setTimeout(180_000);
  const saving = page.locator('[role="status"][data-saving]');
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Requirements" })).toBeVisible();
  const criteria = page.getByRole("region", { name: "Criteria" }).getByRole("listitem");
  const before = await criteria.count();

  await page
    .getByLabel("Measure of the next criterion")
    .selectOption({ label: "Critical fall height, by ASTM F355, missile E" });
  await page.getByRole("button", { name: "Add a criterion" }).click();
  const added = criteria.nth(before);
  await expect(added.getByLabel("Name of the criterion")).toHaveValue("Critical fall height");
  await expect(added).toContainText("This criterion has neither a limit nor a way to score, so it decides nothing.");
  await added.getByLabel("Gate", { exact: true }).selectOption({ label: "At least" });
  await added.getByLabel("Limit", { exact: true }).fill("1.3 m");
  await added.getByLabel("Score", { exact: true }).selectOption({ label: "More is better" });
  await added.getByLabel("Nothing up to").fill("1.0 m");
  await added.getByLabel("In full from").fill("1.6 m");
  await added.getByLabel("Weight in points").fill("15");
  // derived: the demonstration's weights add up to 100, and 15 ÷ 115 = 13.04 %
  await expect(added.getByRole("status")).toHaveText("13 % of the whole");
  await expect(page.getByRole("region", { name: "Weights", exact: true }).first()).toContainText("at least 1.3 m");
  await expect(saving).toHaveText(/^Saved at /);
  await expect(added.getByRole("img", { name: /^Value of Critical fall height/ })).toBeVisible();

  await added.getByLabel("Score", { exact: true }).selectOption({ label: "Less is better" });
  await expect(added.getByLabel("Nothing from")).toHaveValue("1.0 m");
  await added.getByLabel("Score", { exact: true }).selectOption({ label: "More is better" });
  await expect(added.getByLabel("In full from")).toHaveValue("1.6 m");

  const mass = criteria.filter({ has: page.locator("summary", { hasText: "Infill mass per area" }) });
  await mass.locator("summary").click();
  await mass.getByLabel("In full from").fill("9 kg");
  const sentence =
    "For the best figure: “kg” is a unit of mass. Expected mass per area, for instance in lb/ft², kg/m², g/m² or oz/yd².";
  await expect(mass.getByLabel("In full from")).toHaveAccessibleDescription(sentence);
  await expect(saving).toHaveText(/^Kept as a draft: one entry /);
  await mass.locator("summary").click();
  await page.getByRole("button", { name: "Go to the first" }).click();
  await expect(mass.getByLabel("In full from")).toBeFocused();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("9 lb/ft²");
  await expect(saving).toHaveText(/^Saved at /);

  await page.reload();
  await criteria.nth(before).locator("summary").click();
  await expect(criteria.nth(before).getByLabel("Limit", { exact: true })).toHaveValue("1.3 m");
  await expect(criteria.nth(before).getByLabel("Weight in points")).toHaveValue("15");
});

test("an architect moves a criterion with the keyboard and keeps the focus", async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Requirements" })).toBeVisible();
  const names = page.getByRole("region", { name: "Criteria" }).getByRole("listitem").locator("summary strong");
  const [first = "", second = "", ...others] = await names.allTextContents();
  await page.getByRole("button", { name: `Move ${first} down` }).focus();
  await page.keyboard.press("Enter");
  await expect(names).toHaveText([second, first, ...others]);
  await expect(page.getByRole("button", { name: `Move ${first} down` })).toBeFocused();
  await page.keyboard.press("Alt+ArrowUp");
  await expect(names).toHaveText([first, second, ...others]);
  await expect(page.getByText(`${first} is now number 1 of ${others.length + 2}.`)).toBeAttached();
});

test("all criteria opened fit 320 CSS pixels without scrolling sideways", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Requirements" })).toBeVisible();
  await page.setViewportSize({ width: 320, height: 640 });
  const summaries = page.getByRole("region", { name: "Criteria" }).getByRole("listitem").locator("summary");
  for (const summary of await summaries.all()) await summary.click();
  await expect(page.getByLabel("Name of the criterion").last()).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});
