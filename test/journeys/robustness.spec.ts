import { demonstration, expect, test } from "./fixtures";

test("a board member sees how firm the order is, draws, cancels once, and compares two bids", async ({
  browser,
  page,
}) => {
  const address = await demonstration(browser);
  await page.goto(`${address}/evaluation`);
  await page.getByRole("link", { name: "How firm is the order?" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "How firm is the order?" })).toBeVisible();

  await page.getByLabel("Sets of weights").selectOption("1,000,000");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await expect(page.getByRole("progressbar", { name: "Sets of weights drawn" })).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByText("Cancelled. Nothing was kept.")).toBeVisible();

  await page.getByLabel("Sets of weights").selectOption("10,000");
  await page.getByLabel("Seed").fill("seven");
  await expect(page.getByText("The seed reads “seven”; expected a whole number such as 1.")).toBeVisible();
  await page.getByLabel("Seed").fill("7");
  await page.getByRole("button", { name: "Draw", exact: true }).click();
  await expect(page.getByText(/^Drawn 10,000 sets of weights of each kind with seed 7\./)).toBeVisible();
  const near = page.getByRole("figure").filter({ hasText: "Weights near the owner’s" });
  await expect(near).toContainText(
    /In \d+ of 100 sets of weights bid [A-D] comes first \(standard error [\d.]+ of 100\)/,
  );
  await near.getByText("The figures behind this drawing").click();
  await expect(near.getByRole("table").getByRole("row")).toHaveCount(5); // the headings and four bids

  await page.getByRole("combobox", { name: "This bid" }).selectOption({ label: "Bid D, Bidder Dogwood (invented)" });
  await page.getByRole("combobox", { name: "against" }).selectOption({ label: "Bid B, Bidder Birch (invented)" });
  await page.getByRole("button", { name: "Compare" }).click();
  await expect(page).toHaveURL(/first=bid-d&second=bid-b#two-bids$/);
  await expect(page.getByText(/^Bid D is ahead of bid B on /)).toBeVisible();
});

test.describe("without script", () => {
  test.use({ javaScriptEnabled: false });
  test("the exact parts stand on the page", async ({ browser, page }) => {
    const context = await browser.newContext({ javaScriptEnabled: true });
    const opener = await context.newPage();
    await opener.goto("/");
    await opener.getByRole("button", { name: "Open the demonstration project" }).click();
    await opener.waitForURL(/side-by-side$/);
    const address = new URL(opener.url()).pathname.replace(/\/side-by-side$/, "");
    await context.close();
    await page.goto(`${address}/evaluation/robustness`);
    await expect(
      page.getByRole("table", { name: "How far each weight can move before another bid leads" }),
    ).toBeVisible();
    await expect(page.getByText(/^The answer hangs on the method: /)).toBeVisible();
  });
});
