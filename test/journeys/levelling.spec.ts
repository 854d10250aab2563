import type { Page } from "@playwright/test";
import { demonstration, expect, test } from "./fixtures";

const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);

test("an owner's representative levels a bid by keyboard: as bid it stays, and what is unclear is asked", async ({
  browser,
  page,
}) => {
  const project = await demonstration(browser);
  await page.goto(`${project}/levelling`);
  const figures = (name: RegExp) => page.getByRole("row", { name });
  await expect(figures(/^Price levelled/)).toContainText("at least $599,587");

  await test.step("an excluded item gets a figure that stands in for its price", async () => {
    const standing = page.getByRole("combobox", { name: "Carpet, bid B", exact: true });
    await standing.focus();
    await page.keyboard.press("ArrowUp");
    await expect(page.getByRole("combobox", { name: "Shock layer, bid B", exact: true })).toBeFocused();
    await page.keyboard.press("e");
    await page.keyboard.press("Enter");
    await expect(page.getByRole("heading", { name: "Shock layer, bid B" })).toBeFocused();
    await page.getByLabel("What stands in for its price").selectOption("A figure of the owner’s own");
    await page.getByLabel("Plug: amount").fill("$40,000");
    await page.keyboard.press("Escape");
    await expect(page.getByRole("combobox", { name: "Shock layer, bid B", exact: true })).toBeFocused();
    await saved(page);
    await expect(figures(/^Price levelled/)).toContainText("at least $639,587");
    await expect(figures(/^Price as bid/)).toContainText("$570,687");
  });

  await test.step("the working names what stands in", async () => {
    const cell = figures(/^Price levelled/).getByRole("cell", { name: "at least $639,587" });
    await cell.getByText("Show working").click();
    await expect(cell.getByRole("term").filter({ hasText: "Shock layer (excluded from the bid)" })).toBeVisible();
  });

  await test.step("what is unclear in another bid stands in the letter to its bidder", async () => {
    await page.getByRole("combobox", { name: "Bonds, bid A", exact: true }).selectOption("Unclear");
    await page.getByRole("button", { name: "Details of Bonds, bid A" }).click();
    await page.getByLabel("What stands in for its price").selectOption("A question to the bidder");
    await page.getByLabel("Question to the bidder").fill("Which bonds does your price hold?");
    await page.getByRole("button", { name: "Close the details" }).click();
    await saved(page);
    await expect(figures(/^Still open/).getByRole("link", { name: "Bonds" })).toBeVisible();
    await page.goto(`${project}/bids/bid-a/questions`);
    const letter = page.getByRole("article", { name: "Questions on your bid" });
    await expect(letter.getByText("Which bonds does your price hold?")).toBeVisible();
  });
});

test("an item comes back with what was found of it", async ({ browser, page }) => {
  await page.goto(`${await demonstration(browser)}/levelling`);
  await page.getByText("Rename, add or take out items").click();
  await page.getByRole("button", { name: "Take out Drainage" }).click();
  const standing = page.getByRole("combobox", { name: "Drainage, bid A", exact: true });
  await expect(standing).toBeHidden();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(standing).toHaveValue("included");
  await page.getByRole("button", { name: "Add an item" }).click();
  await page.keyboard.type("Goal posts");
  await expect(page.getByRole("combobox", { name: "Goal posts, bid D", exact: true })).toHaveValue("not-asked");
  await saved(page);
});
