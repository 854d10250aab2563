import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');

const saved = (page: Page) => expect(saving(page)).toHaveText(/^Saved at /);

const criteria = (page: Page) => page.getByRole("region", { name: "Criteria", exact: true }).getByRole("listitem");

/** Opens the fields behind a criterion's summary line. */
const open = (criterion: Locator) => criterion.locator("summary").click();

async function openRequirements(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Requirements" })).toBeVisible();
}

test("a criterion is added, a limit that can’t be read is explained, and both outlive a reload", async ({ page }) => {
  test.setTimeout(120_000);
  await openRequirements(page);
  const before = await criteria(page).count();
  await page
    .getByLabel("Measure of the next criterion")
    .selectOption({ label: "Head injury criterion, by ASTM F355, missile E" });
  await page.getByRole("button", { name: "Add a criterion" }).click();
  await expect(criteria(page)).toHaveCount(before + 1);
  const added = criteria(page).nth(before);
  await expect(added.getByLabel("Name of the criterion")).toBeFocused();
  await expect(added.getByLabel("Name of the criterion")).toHaveValue("Head injury criterion");
  await added.getByLabel("Gate", { exact: true }).selectOption({ label: "At most" });
  await added.getByLabel("Limit", { exact: true }).fill("1000");
  await saved(page);

  const mass = criteria(page).filter({ has: page.locator("summary", { hasText: "Infill mass per area" }) });
  await open(mass);
  await mass.getByLabel("Gate", { exact: true }).selectOption({ label: "At least" });
  const limit = mass.getByLabel("Limit", { exact: true });
  await limit.fill("9 kg");
  await expect(saving(page)).toHaveText("Kept as a draft: one entry can’t be read yet, so it doesn’t count so far.");
  await expect(mass.getByText(/^For the limit: “kg” is a unit of .* Expected /)).toBeVisible();
  await expect(limit).toHaveAttribute("aria-invalid", "true");
  await limit.fill("9 kg/m²");
  await saved(page);
  await expect(limit).toHaveAttribute("aria-invalid", "false");

  await page.reload();
  await expect(criteria(page)).toHaveCount(before + 1);
  await open(added);
  await expect(added.getByLabel("Name of the criterion")).toHaveValue("Head injury criterion");
  await expect(added.getByLabel("Limit", { exact: true })).toHaveValue("1000");
  await open(mass);
  await expect(limit).toHaveValue("9 kg/m²");
});

test("criteria are moved, taken out and put back, and another kind of gate keeps the limit", async ({ page }) => {
  test.setTimeout(120_000);
  await openRequirements(page);
  const names = criteria(page).locator("summary strong");
  const [first = "", second = "", ...others] = await names.allTextContents();

  await page.getByRole("button", { name: `Move ${first} down` }).click();
  await expect(names).toHaveText([second, first, ...others]);
  const moved = criteria(page).nth(1);
  await open(moved);
  const limit = moved.getByLabel("Limit", { exact: true });
  await expect(limit).toHaveValue("165 g");
  await moved.getByLabel("Gate", { exact: true }).selectOption({ label: "At most" });
  await expect(limit).toHaveValue("165 g");

  await page.getByRole("button", { name: `Remove ${first}`, exact: true }).click();
  await expect(names).toHaveText([second, ...others]);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(names).toHaveText([second, first, ...others]);
  await saved(page);

  await page.reload();
  await expect(names).toHaveText([second, first, ...others]);
  await open(moved);
  await expect(moved.getByLabel("Gate", { exact: true })).toHaveValue("at-most");
  await expect(limit).toHaveValue("165 g");
});
