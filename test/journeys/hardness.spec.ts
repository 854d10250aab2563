import { demonstration, expect, test } from "./fixtures";

const summary = "Chance that the limit is kept, by year";

test("a board member goes through the years, and a planned top-up moves the year that matters", async ({
  browser,
  page,
}) => {
  test.setTimeout(120_000);
  const address = await demonstration(browser);
  await page.goto(`${address}/hardness`);
  const figure = page.getByRole("figure").filter({ hasText: summary });
  await expect(figure).toContainText(
    "Bid A: The chance that all 10 test locations stay below 165 g first falls below 95 % in year 6.",
  );

  const year = page.getByLabel("Year to look at");
  await year.focus();
  await year.press("End");
  await expect(year).toHaveAttribute("aria-valuetext", "year 8");
  await expect(
    page.getByText(/^In year 8, \d in 10 fields like bid A would have at least one of 10 test locations/),
  ).toBeVisible();
  await year.press("Home");
  await expect(page.getByText(/^As new, fewer than 1 in 100 fields like bid A would/)).toBeVisible();

  await figure.getByText("The figures behind this drawing").click();
  await expect(figure.getByRole("table").getByRole("row")).toHaveCount(10); // the headings, as new, and eight years

  await page.goto(`${address}/requirements`);
  await page.getByRole("button", { name: "Add a top-up or deep grooming" }).click();
  await page.getByLabel("At the end of year").fill("4");
  await page.getByLabel("Share of the change that it takes back").fill("most of it");
  await expect(page.getByText(/No number was found in “most of it”/).first()).toBeVisible();
  await page.getByLabel("Share of the change that it takes back").fill("80 %");
  await page.getByLabel("Price line that pays for it").selectOption("Infill top-up");
  await page.getByLabel("What it is").fill("Top-up to full depth");
  await expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);

  await page.goto(`${address}/hardness`);
  await expect(figure).toContainText(
    "Bid A: The chance that all 10 test locations stay below 165 g stays at 95 % or more through year 8.",
  );
  const costs = page.getByRole("table", { name: "Cost of each planned top-up or grooming, bid by bid" });
  await expect(costs.getByRole("row").last()).toContainText(/Top-up to full depth, end of year 4.*\$[\d,]+/);
  await expect(costs.getByRole("row").last().getByRole("cell").last()).toHaveText("no price line of this name");
  await expect(
    page.getByText("The one at the end of year 4, “Infill top-up”, has no price line in bid D."),
  ).toBeVisible();
});
