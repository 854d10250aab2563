import type { Page } from "@playwright/test";
import { looksWell } from "./axe-findings";
import { demonstration, expect, startProject, test } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');
const saved = (page: Page) => expect(saving(page)).toHaveText(/^Saved at /);

/** A new project with a bid that guarantees a level. Gives its address. */
async function projectWithBid(page: Page, name: string): Promise<string> {
  await startProject(page, name);
  const project = new URL(page.url()).pathname.replace(/\/brief$/, "");
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Bids" }).click();
  await page.getByLabel("Bidder", { exact: true }).fill("First bidder");
  await page.getByRole("button", { name: /^Add bid / }).click();
  await page.getByLabel("Property of the next claim").selectOption("g-max");
  await page.getByRole("button", { name: "Add a claim" }).click();
  await page.getByLabel("Figure", { exact: true }).fill("165 g");
  await page.getByLabel("Test method").fill("ASTM F1936");
  await page.getByLabel("Evidence", { exact: true }).selectOption({ label: "Guaranteed" });
  await page.getByLabel("Document", { exact: true }).fill("Warranty");
  await saved(page);
  return project;
}

/** Adds an acceptance test with the locations of the plan as it stands on the page. */
async function addAcceptance(page: Page): Promise<void> {
  await page.getByLabel("Day of the test").fill("2028-06-01");
  await page.getByLabel("Bid that was installed").selectOption({ label: "A: First bidder" });
  await page.getByRole("button", { name: "Add the campaign" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Acceptance test, June 1, 2028" })).toBeVisible();
}

const pastedBlock = [
  ["Location", "Drop 1", "Drop 2", "Drop 3"],
  ["1", "110", "118", "120"],
  ["2", "108", "115", "117"],
  ["3", "150", "166", "17O"], // a letter O
  ["4", "112", "119", "121"],
  ["5", "109", "116", "119"],
  ["6", "107", "114", "117"],
]
  .map((row) => row.join("\t"))
  .join("\n");

test("a representative plans a test, pastes its drops, puts one right and reads the verdict", async ({
  page,
  context,
}) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const project = await projectWithBid(page, "Acceptance of a field");

  await page.goto(`${project}/field-tests`);
  await page.getByRole("checkbox", { name: "Soccer" }).check();
  await page.getByRole("checkbox", { name: "Other shapes, evenly spread" }).uncheck();
  await page.getByLabel("Number of locations").fill("6");
  await page.getByLabel("Spots of your own, one on each line").fill("drain at the gate, 900 ft, 5 ft");
  await page.getByRole("button", { name: "Draw the plan" }).click();
  await expect(page.getByText("“drain at the gate” lies outside the field.")).toBeVisible();
  await page.getByLabel("Spots of your own, one on each line").fill("");
  await page.getByRole("button", { name: "Draw the plan" }).click();
  await expect(page.getByRole("img", { name: "Plan of the field with 6 locations" })).toBeVisible();
  await page.getByText("The figures behind this drawing: Where to test, to scale").click();
  const planned = page.getByRole("table", { name: "Locations to test" });
  await expect(planned.getByRole("row")).toHaveCount(7);
  await expect(planned.getByRole("cell", { name: "Centre spot" })).toBeVisible();

  // 22 locations without one above the limit show 10 % with 90 %: ln 0.1 ÷ ln 0.9 = 21.9
  await page.getByLabel("Confidence").fill("90 %");
  await page.getByRole("button", { name: "Work it out" }).click();
  await expect(page.getByText(/^By counting: 22 locations, of which none may be/)).toBeVisible();

  await addAcceptance(page);
  await expect(page.getByLabel("Location, location 1", { exact: true })).toHaveValue("Centre spot");
  await page.getByText("Paste drops from a spreadsheet").click();
  await page.getByLabel("Pasted rows of drops").fill(pastedBlock);
  await expect(page.getByText("6 rows were found. 1 cell does not read yet;")).toBeVisible();
  const preview = page.getByRole("table", { name: "How the rows were read" });
  await expect(preview.getByRole("row").nth(3)).toContainText("17O");
  await expect(preview.getByRole("row").nth(3)).toContainText("location 3");
  await page.getByRole("button", { name: "Take over these 6 rows" }).click();
  await expect(page.getByLabel("Location, location 1", { exact: true })).toHaveValue("Centre spot");
  await expect(saving(page)).toHaveText(/^Kept as a draft: one entry can’t be read yet/);
  const bad = page.getByLabel("Drop 3, location 3", { exact: true });
  await expect(bad).toHaveValue("17O");
  await bad.fill("171");
  await saved(page);

  // by hand: (166 + 171) ÷ 2 = 168.5 g, below 200 g
  const results = page.getByRole("table", { name: "Each location against 200.0 g" });
  await expect(results.getByRole("row").nth(3)).toContainText("169 g");
  await expect(results.getByRole("row").nth(3)).toContainText("meets");
  await expect(page.getByText(/^The field meets: of 6 locations tested on 2028-06-01, none is/)).toBeVisible();
  await expect(page.getByRole("img", { name: "Levels over the field: 6 measured locations" })).toBeVisible();
  await expect(page.getByText("Only the marked points were measured.").first()).toBeVisible();

  await expect(page.getByLabel("Where the clause stands")).toHaveValue("Warranty");
  await expect(page.getByLabel("Level in the clause")).toHaveValue("165 g");
  await page.getByRole("button", { name: "Copy the facts" }).click();
  await expect(page.getByText("Copied.")).toBeVisible();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain("1 location was at or above 165.0 g:");
  expect(copied).toContain("drops 150, 166 and 171, level 168.5 g");

  await page.goto(`${project}/field-tests`);
  await expect(page.getByRole("img", { name: "Level over the years, bid A: one campaign" })).toBeVisible();
  await expect(page.getByText(/the guarantee of 165 g is not kept/)).toBeVisible();
  await page.getByRole("button", { name: "Remove Acceptance test, June 1, 2028" }).click();
  await page.getByRole("button", { name: "Bring the campaign back" }).click();
  await expect(page.getByRole("link", { name: "Acceptance test, June 1, 2028", exact: true })).toBeVisible();
});

test("depths typed by keyboard give a map and the infill to buy", async ({ page }) => {
  const project = await projectWithBid(page, "Depths of a field");
  await page.goto(`${project}/field-tests`);
  await addAcceptance(page);
  await page.getByRole("button", { name: "Add a depth" }).click();
  await expect(page.getByLabel("x, depth 1", { exact: true })).toBeFocused();
  await page.keyboard.type("100 ft");
  await page.keyboard.press("Tab");
  await page.keyboard.type("80 ft");
  await page.keyboard.press("Tab");
  await page.keyboard.type("1.5 in");
  await page.keyboard.press("Enter");
  await expect(page.getByLabel("x, depth 2", { exact: true })).toBeFocused();
  await page.keyboard.type("260 ft");
  await page.keyboard.press("Tab");
  await page.keyboard.type("80 ft");
  await page.keyboard.press("Tab");
  await page.keyboard.type("1.5 in");
  await saved(page);
  await page.getByLabel("Depth wanted").fill("2 in");
  await page.getByLabel("Material to add").selectOption({ label: "Silica sand, rounded" });
  await page.getByRole("button", { name: "Work it out" }).click();
  // by hand: 360 ft × 160 ft × 0.5 in ÷ 12 = 2,400 ft³ = 88.9 yd³
  const table = page.getByRole("table", { name: "Infill to add" });
  await expect(table.getByRole("row", { name: /^Volume missing/ })).toContainText("88.9 yd³");
  await expect(page.getByRole("img", { name: "Infill depth over the field: 2 measured depths" })).toBeVisible();
});

const noConnection = /ERR_INTERNET_DISCONNECTED|Failed to fetch|ERR_FAILED/;

test("drops are entered on the field without a connection, and nothing is lost", async ({
  page,
  context,
  complaints,
}) => {
  const project = await projectWithBid(page, "Without a connection");
  await page.goto(`${project}/field-tests`);
  await addAcceptance(page);
  await page.getByRole("link", { name: "Enter on the field, by phone" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "On the field" })).toBeVisible();
  await page.reload();
  await expect(page.getByText("This page opens without a connection.")).toBeVisible();
  const address = page.url();

  // one value that the server takes before the connection goes
  await page.getByLabel("Drop 1, g").fill("101");
  await expect(saving(page)).toHaveText(/^Sent and saved at /);

  await context.setOffline(true);
  await page.getByLabel("Drop 2, g").fill("112");
  await page.getByLabel("Drop 3, g").fill("114");
  await expect(saving(page)).toHaveText(
    "Kept on this device, not yet sent. It is sent by itself when the connection is back.",
  );
  await page.getByRole("button", { name: "Next" }).click();
  await page.getByLabel("Drop 1, g").fill("105");
  await page.reload();
  await expect(page.getByLabel("Drop 1, g")).toHaveValue("105");
  await page.getByRole("button", { name: "Previous" }).click();
  await expect(page.getByLabel("Drop 1, g")).toHaveValue("101");
  await expect(page.getByLabel("Drop 2, g")).toHaveValue("112");
  await expect(page.getByLabel("Drop 3, g")).toHaveValue("114");
  await expect(saving(page)).toHaveText(/^Kept on this device, not yet sent\./);
  expect(page.url()).toContain(address.replace(/#.*$/, ""));

  await context.setOffline(false);
  await expect(saving(page)).toHaveText(/^Sent and saved at /);
  complaints.splice(0, complaints.length, ...complaints.filter((text) => !noConnection.test(text)));
  await page.getByRole("link", { name: "Acceptance test, June 1, 2028" }).click();
  await expect(page.getByLabel("Drop 1, location 1", { exact: true })).toHaveValue("101");
  await expect(page.getByLabel("Drop 2, location 1", { exact: true })).toHaveValue("112");
  await expect(page.getByLabel("Drop 3, location 1", { exact: true })).toHaveValue("114");
  await expect(page.getByLabel("Drop 1, location 2", { exact: true })).toHaveValue("105");
});

test("what was saved at a desk meanwhile is not overwritten from the field", async ({
  page,
  context,
  browser,
  complaints,
}) => {
  const project = await projectWithBid(page, "Two on one campaign");
  await page.goto(`${project}/field-tests`);
  await addAcceptance(page);
  const campaign = page.url();
  await page.goto(`${campaign}/on-the-field`);
  await expect(page.getByText("This page opens without a connection.")).toBeVisible();
  await context.setOffline(true);
  await page.getByLabel("Drop 1, g").fill("111");
  await expect(saving(page)).toHaveText(/^Kept on this device, not yet sent\. It is sent/);

  const desk = await (await browser.newContext()).newPage();
  await desk.goto(campaign);
  await desk.getByLabel("Laboratory", { exact: true }).fill("Laboratory at the desk");
  await saved(desk);

  await context.setOffline(false);
  const notice = page.getByRole("alert", { name: "Two versions of this page" });
  await expect(notice.getByRole("cell", { name: "Laboratory at the desk" })).toBeVisible();
  await expect(notice.getByRole("cell", { name: "111", exact: true })).toBeVisible();
  await expect(page.getByLabel("Drop 1, g")).toHaveValue("111");
  await expect(saving(page)).toHaveText(/^Kept on this device, not sent: /);
  await desk.reload();
  await expect(desk.getByLabel("Laboratory", { exact: true })).toHaveValue("Laboratory at the desk");
  await expect(desk.getByLabel("Drop 1, location 1", { exact: true })).toHaveValue("");
  complaints.splice(0, complaints.length, ...complaints.filter((text) => !noConnection.test(text)));
});

test("a trace of a drop is read in the browser: level and criterion of a half sine", async ({ page }) => {
  const project = await projectWithBid(page, "Trace of a drop");
  await page.goto(`${project}/field-tests/trace`);
  const sent: string[] = [];
  page.on("request", (request) => {
    // who has the page open is asked every few seconds, in a few words
    const isShort = request.url().endsWith("/together") && (request.postData()?.length ?? 0) < 400;
    if (request.method() !== "GET" && !isShort) sent.push(request.url());
  });
  const [amplitude, duration, before] = [120, 0.01, 0.01];
  const rows = Array.from({ length: 601 }, (_, index) => {
    const time = index / 20_000;
    const inside = time >= before && time <= before + duration;
    return [time * 1000, inside ? amplitude * Math.sin((Math.PI * (time - before)) / duration) : 0] as const;
  });
  const file = ["time;level", ...rows.map(([time, level]) => `${time.toFixed(3)};${level.toFixed(5)}`)].join("\n");
  await page
    .getByLabel("Acceleration–time file")
    .setInputFiles({ name: "drop.csv", mimeType: "text/csv", buffer: Buffer.from(file) });
  await expect(page.getByText("Choose the unit of the time: the file does not say it.")).toBeVisible();
  await page.getByLabel("Unit of the time").selectOption("ms");
  await page.getByLabel("Unit of the acceleration").selectOption("g");
  const figures = page.getByRole("table", { name: "Figures of this drop" });
  await expect(figures.getByRole("row", { name: /^G-max/ })).toContainText("120.0 g");
  // closed form: 0.4146456 · A^2.5 · T
  const closed = 0.4146456 * amplitude ** 2.5 * duration;
  const shown =
    (await figures
      .getByRole("row", { name: /^Head injury criterion/ })
      .locator("strong")
      .textContent()) ?? "";
  expect(Math.abs(Number(shown.replaceAll(",", "")) / closed - 1)).toBeLessThan(0.005);
  await expect(page.getByRole("img", { name: /^Level against time/ })).toBeVisible();
  await expect(page.getByRole("listitem").filter({ hasText: "as it stands, without a filter" })).toBeVisible();
  await looksWell(page);
  await page.getByLabel("Column of the acceleration").selectOption("1");
  await expect(page.getByText("Column 1 is named for the time and for the acceleration.")).toBeVisible();
  expect(sent, "nothing of the file is sent").toEqual([]);
});

test("a board member reads what the tests say of the years to come", async ({ browser, page }) => {
  await page.goto(`${await demonstration(browser)}/field-tests`);
  const years = page.getByRole("region", { name: "The years to come" });
  const table = years.getByRole("table");
  // the yearly test of the demonstration found one of ten locations above the limit, so a clean test is not to be expected
  await expect(table.getByRole("row").nth(1)).toContainText("3 years");
  await expect(table.getByRole("row").nth(1)).not.toContainText(/more than 9|9 in 10/);
  await expect(years).toContainText("Spots differ as they did on 2030-08-16");
  await expect(years).toContainText("and not of injury");
});
