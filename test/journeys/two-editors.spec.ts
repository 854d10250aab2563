import type { Page } from "@playwright/test";
import { looksWell } from "./axe-findings";
import { demonstration, expect, startProject, test } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');

/** A page that hears nothing of what others save until it saves itself, as if it had just asked. */
async function unawarePage(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.route("**/together", (route) => route.fulfill({ status: 404, json: null }));
  return other;
}

/** Two pages on the brief of one new project; the first saves an owner, the second types another over the older version. */
async function twoVersions(page: Page): Promise<Page> {
  await startProject(page, "Two editors");
  const other = await unawarePage(page);
  await other.goto(page.url());
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Test district");

  await page.getByLabel("Owner", { exact: true }).fill("Owner of the first page");
  await expect(saving(page)).toHaveText(/^Saved at /);
  await other.getByLabel("Owner", { exact: true }).fill("Owner of the second page");
  const notice = other.getByRole("alert", { name: "Two versions of this page" });
  await expect(notice.getByRole("cell", { name: "Owner of the first page" })).toBeVisible();
  await expect(notice.getByRole("cell", { name: "Owner of the second page" })).toBeVisible();
  await expect(saving(other)).toHaveText(/^Not saved: /);
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
  return other;
}

test("two pages on one brief: the second is asked, and saves its text over the other", async ({ page }) => {
  test.setTimeout(120_000);
  const other = await twoVersions(page);
  await page.reload();
  await expect(page.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the first page");
  await other.getByRole("button", { name: "Save mine over theirs" }).click();
  await expect(saving(other)).toHaveText(/^Saved at /);
  await expect(other.getByRole("alert", { name: "Two versions of this page" })).toBeHidden();
  await other.reload();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
});

test("two pages on one brief: the second opens the other’s text and can bring its own back", async ({ page }) => {
  test.setTimeout(120_000);
  const other = await twoVersions(page);
  await other.getByRole("button", { name: "Open theirs, keep mine as a draft" }).click();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the first page");
  const draft = other.getByRole("region", { name: "A draft of yours" });
  await expect(draft.getByRole("cell", { name: "Owner of the second page" })).toBeVisible();
  await other.waitForLoadState("networkidle"); // the page was loaded anew, and its script takes over a moment later
  await draft.getByRole("button", { name: "Put my draft in place" }).click();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
  await expect(saving(other)).toHaveText(/^Saved at /);
  await other.reload();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
});

test("two pages on one brief: each place is chosen on a page of its own, and the draft is gone", async ({ page }) => {
  test.setTimeout(120_000);
  const other = await twoVersions(page);
  await page.getByLabel("Hours of use a year").fill("1900 h/year");
  await expect(saving(page)).toHaveText(/^Saved at /);
  await other.getByRole("button", { name: "Choose entry by entry" }).click();
  await expect(other.getByRole("heading", { level: 1, name: "Two versions" })).toBeVisible();
  await looksWell(other);
  const row = (name: string) => other.getByRole("row").filter({ has: other.getByRole("rowheader", { name }) });
  await expect(row("owner").getByRole("cell").first()).toHaveText("both");
  await other.getByRole("button", { name: "Save what is chosen" }).click();
  await expect(other.getByText("One place is still open: choose yours or theirs there.")).toBeVisible();
  await other.getByRole("radio", { name: "Yours: owner" }).check();
  await other.getByRole("button", { name: "Save what is chosen" }).click();
  await expect(other.getByRole("heading", { level: 1, name: "Brief" })).toBeVisible();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
  await expect(other.getByLabel("Hours of use a year")).toHaveValue("1900 h/year");
  await expect(other.getByRole("region", { name: "A draft of yours" })).toBeHidden();
  // the page that had saved hears of it
  await expect(page.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
});

test("what one page saves comes into the other, marked; what is typed there meanwhile stays, and both are saved", async ({
  page,
}) => {
  test.setTimeout(120_000);
  await startProject(page, "Together");
  const other = await page.context().newPage();
  await other.goto(page.url());
  await expect(page.getByText("Also on this page: you, in another window")).toBeVisible();
  const name = other.getByLabel("Name of the project", { exact: true });
  await name.fill("Together, typed by the other");
  await page.getByLabel("Owner", { exact: true }).fill("Owner of the first page");
  await page.getByLabel("Hours of use a year").fill("1900 h/year");
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the first page");
  await expect(other.getByText("Changed by Another page on this computer just now").first()).toBeVisible();
  await expect(name).toHaveValue("Together, typed by the other");
  await expect(name).toBeFocused();
  await expect(page.getByLabel("Name of the project", { exact: true })).toHaveValue("Together, typed by the other");
  await other.reload();
  await expect(name).toHaveValue("Together, typed by the other");
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the first page");
  await expect(other.getByLabel("Hours of use a year")).toHaveValue("1900 h/year");

  // a page that is read stays as it is, and says so
  await other.goto(page.url().replace(/brief$/, "evaluation"));
  await page.getByLabel("Owner", { exact: true }).fill("A third owner");
  await other.getByRole("button", { name: "Show it as it stands now" }).click();
  await expect(other.getByRole("banner").getByText("A third owner")).toBeVisible();
  await expect(other.getByRole("button", { name: "Show it as it stands now" })).toBeHidden();
});

test("levelling and owner’s figures, open at once, are parts of one document: both are kept, and one part is asked for", async ({
  browser,
  page,
}) => {
  const project = await demonstration(browser);
  const [figures, again] = [await page.context().newPage(), await unawarePage(page)];
  await page.goto(`${project}/levelling`);
  await again.goto(`${project}/levelling`);
  await figures.goto(`${project}/cost/owners-figures`);
  const bonds = (at: Page) => at.getByRole("combobox", { name: "Bonds, bid A", exact: true });
  await bonds(page).selectOption("Excluded");
  await expect(saving(page)).toHaveText(/^Saved at /);

  await figures.getByText("Grooming: worked out for bids A and B").click();
  await figures.getByLabel("Cost of an hour of work").fill("$52/h");
  await expect(saving(figures)).toHaveText(/^Saved at /);
  await figures.reload();
  await expect(figures.getByLabel("Cost of an hour of work")).toHaveValue("$52/h");

  await bonds(again).selectOption("Included");
  const notice = again.getByRole("alert", { name: "Two versions of this page" });
  await expect(notice.getByRole("row")).toHaveCount(2); // the head and the one standing that both set
  await again.getByRole("button", { name: "Save mine over theirs" }).click();
  await expect(saving(again)).toHaveText(/^Saved at /);
  await figures.reload();
  await expect(figures.getByLabel("Cost of an hour of work")).toHaveValue("$52/h");
  await page.reload();
  await expect(bonds(page)).toHaveValue("included");
});
