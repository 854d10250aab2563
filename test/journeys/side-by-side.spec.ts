import type { Page } from "@playwright/test";
import { expect, test } from "./fixtures";

const comparison = (page: Page) => page.getByRole("table", { name: "Claims and derived figures of all bids" });

/** The letters of the columns, from the first to the last. */
const columns = async (page: Page): Promise<string> => {
  const heads = await comparison(page).getByRole("columnheader", { name: /^Bid / }).allTextContents();
  return heads.map((head) => /^Bid\s*([A-Z])/.exec(head)?.[1] ?? "?").join("");
};

async function openDemonstration(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByRole("button", { name: "Open the demonstration project" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Side by side" })).toBeVisible();
  await expect(comparison(page)).toBeVisible();
}

test("a reader hides names, moves and pins bids by keyboard, and finds it so after a reload and on coming back", async ({
  page,
}) => {
  await openDemonstration(page);
  await page.getByRole("button", { name: "Hide bidders’ names" }).click();
  await expect(comparison(page).getByRole("columnheader", { name: /^Bid A Bidder A/ })).toBeVisible();
  expect(await columns(page)).toBe("ABCD");

  const moveRight = page.getByRole("button", { name: "Move bid A right" });
  await moveRight.focus();
  await page.keyboard.press("Enter");
  expect(await columns(page)).toBe("BACD");
  await expect(moveRight).toBeFocused();
  await expect(page.getByRole("status").filter({ hasText: "Bid A is now bid 2 of 4." })).toBeAttached();
  const target = await moveRight.boundingBox();
  expect(Math.min(target?.width ?? 0, target?.height ?? 0)).toBeGreaterThanOrEqual(24);

  await page.getByLabel("Keep in front").selectOption("bid D");
  expect(await columns(page)).toBe("DBAC");
  await expect(page.getByRole("button", { name: "Move bid D right" })).toHaveAttribute("aria-disabled", "true");
  await page.getByRole("checkbox", { name: "Show bid C" }).uncheck();
  await page.getByRole("radio", { name: "Only gaps" }).check();
  expect(await columns(page)).toBe("DBA");
  await expect(page).toHaveURL(/rows=gaps.*order=bid-b,bid-a,bid-c,bid-d&pin=bid-d/);

  await page.reload();
  expect(await columns(page)).toBe("DBA");
  await expect(page.getByRole("radio", { name: "Only gaps" })).toBeChecked();

  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Evaluation" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Evaluation" })).toBeVisible();
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1, name: "Side by side" })).toBeVisible();
  expect(await columns(page)).toBe("DBA");
  await expect(page.getByRole("checkbox", { name: "Show bid C" })).not.toBeChecked();

  await page.getByLabel("Order").selectOption("as entered");
  expect(await columns(page)).toBe("DAB");
});

test("a reader orders the bids by what they cost, and by how much infill they lay", async ({ page }) => {
  await openDemonstration(page);
  const figures = async (row: RegExp): Promise<readonly number[]> => {
    const texts = await comparison(page).getByRole("row", { name: row }).getByRole("cell").allTextContents();
    return texts.map((text) => Number(/[\d,]+(\.\d+)?/.exec(text)?.[0].replaceAll(",", "")));
  };
  await page.getByLabel("Order").selectOption("by life-cycle cost, an open one at its least");
  const costs = await figures(/^Present value/);
  expect(costs).toEqual(costs.toSorted((one, other) => one - other));
  await page.getByLabel("Order").selectOption("by infill mass");
  const masses = await figures(/^Total stabilising mass/);
  expect(masses).toHaveLength(4);
  expect(masses).toEqual(masses.toSorted((one, other) => other - one));
});

test("what lies behind a figure is fetched when it is opened, and said plainly where it cannot be", async ({
  page,
  complaints,
}) => {
  await openDemonstration(page);
  const working = page.getByRole("button", { name: "Show working of Total stabilising mass, bid B" });
  await page.route("**/side-by-side/behind**", (route) => route.abort());
  await working.click();
  await expect(page.getByText("This could not be fetched.")).toBeVisible();
  // the request that was cut off on purpose
  complaints.splice(0, complaints.length, ...complaints.filter((text) => !/ERR_FAILED/.test(text)));
  await page.unroute("**/side-by-side/behind**");
  await working.click();
  await working.click();
  await expect(comparison(page).getByText(/^Source: /)).toBeVisible();
  await expect(working).toHaveAttribute("aria-expanded", "true");
});

test.describe("without script", () => {
  test.use({ javaScriptEnabled: false });

  test("the server lays out the same table and opens a row", async ({ page }) => {
    await openDemonstration(page);
    await expect(comparison(page).getByRole("row", { name: /^Total stabilising mass/ })).toContainText("765,320 lb");
    await page.getByLabel("Order").selectOption("by infill mass");
    await page.getByRole("checkbox", { name: "Show bid D" }).uncheck();
    await page.getByRole("button", { name: "Show", exact: true }).click();
    await expect.poll(() => columns(page)).toHaveLength(3); // the answer takes its time
    const ordered = await columns(page);
    expect(ordered).not.toContain("D");
    const second = ordered.charAt(1);
    await page.getByRole("button", { name: `Move bid ${second} left` }).click();
    expect(await columns(page)).toBe(`${second}${ordered.charAt(0)}${ordered.charAt(2)}`);

    const mass = comparison(page).getByRole("row", { name: /^Total stabilising mass/ });
    await mass.getByRole("link", { name: /^open this row/ }).click();
    await expect(mass.getByText(/^Source: /)).toHaveCount(3);
    expect(await columns(page)).toBe(`${second}${ordered.charAt(0)}${ordered.charAt(2)}`);
  });
});
