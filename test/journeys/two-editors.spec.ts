import type { Page } from "@playwright/test";
import { demonstration, expect, startProject, test } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');

/** Two pages on the brief of one new project; the first saves an owner, the second types another over the older version. */
async function twoVersions(page: Page): Promise<Page> {
  await startProject(page, "Two editors");
  const other = await page.context().newPage();
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
  await draft.getByRole("button", { name: "Put my draft in place" }).click();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
  await expect(saving(other)).toHaveText(/^Saved at /);
  await other.reload();
  await expect(other.getByLabel("Owner", { exact: true })).toHaveValue("Owner of the second page");
});

test("levelling and owner’s figures, open at once, are parts of one document: both are kept, and one part is asked for", async ({
  browser,
  page,
}) => {
  const project = await demonstration(browser);
  const [figures, again] = [await page.context().newPage(), await page.context().newPage()];
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
