import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { pdf } from "../attachment/small-files";
import { axeFindings } from "./axe-findings";
import { demonstration, expect, test } from "./fixtures";

const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]').first()).toHaveText(/^Saved at /);

/** Opens a page of the contents; on a phone the list has to be unfolded first. */
async function contents(page: Page, name: string): Promise<void> {
  const list = page.getByRole("navigation", { name: "Contents" });
  const link = list.getByRole("link", { name, exact: true });
  if (!(await link.isVisible())) await list.getByText("Contents", { exact: true }).click();
  await link.click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
}

const accessible = async (page: Page) => expect(await axeFindings(page)).toEqual([]);

for (const [device, width] of [
  ["a desk", 1280],
  ["a phone", 360],
] as const) {
  test(`on ${device}: from a winner to a reviewed submittal with a deviation and a filled row`, async ({
    page,
    browser,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    const project = await demonstration(browser);
    await page.goto(project);

    await test.step("whose bid was taken", async () => {
      await contents(page, "Submittals");
      await page.getByRole("link", { name: "What was awarded" }).click();
      await page.getByLabel("Bid that was taken").selectOption("");
      await saved(page);
      await page.getByRole("link", { name: "Register", exact: true }).click();
      await expect(page.getByText("held against the specification alone")).toBeVisible();
      await page.getByRole("link", { name: "Say whose bid was taken" }).click();
      await page.getByLabel("Bid that was taken").selectOption("bid-a");
      await saved(page);
      await page.getByRole("link", { name: "Register", exact: true }).click();
      await expect(page.getByText("against the specification and against bid A")).toBeVisible();
    });

    await test.step("the register is made from the specification, and what is overdue stands in view", async () => {
      await page.getByLabel("Due on").fill("2026-01-15");
      await page.getByRole("button", { name: "Add 4 lines from the specification" }).click();
      const first = page.getByRole("table", { name: "Register of submittals" }).getByRole("row").nth(1);
      await expect(first).toContainText(/Overdue by [\d,]+ days/);
      await expect(page.getByText(/of 9 closed; late:/)).toBeVisible();
      await accessible(page);
    });

    await test.step("something came: a value with method, condition, evidence and page", async () => {
      await page.getByRole("link", { name: "Samples: Tuft bind" }).click();
      await page.getByRole("button", { name: "Something came" }).click();
      await page.getByLabel("Received on").fill("2026-02-02");
      await page.getByLabel("Reviewer").fill("Owner’s representative");
      await page.getByRole("button", { name: "Add the value" }).click();
      await page.getByLabel("Value", { exact: true }).fill("7.2 lbf");
      await page.getByLabel("Test method").selectOption("d1335");
      await page.getByLabel("Evidence").selectOption({ label: "Accredited laboratory" });
      await page.getByLabel("Document", { exact: true }).fill("Sample report");
      await page.getByLabel("Page", { exact: true }).fill("2");
      await saved(page);
    });

    await test.step("a report is checked by its own arithmetic and pages", async () => {
      await page.getByRole("button", { name: "Add a laboratory report" }).click();
      const report = page.getByRole("group", { name: "Report 1" });
      await report.getByLabel("Document").fill("Sample report");
      await report.getByLabel("Pages it says it has").fill("3");
      await report.getByLabel("Pages that are there").fill("1-2");
      await report.getByRole("button", { name: "Add an average to check" }).click();
      await report.getByLabel("Of what").fill("Tuft bind");
      await report.getByLabel("Average as printed").fill("7.2");
      await report.getByLabel("Reading 1").fill("6.8");
      await report.getByLabel("Reading 2").fill("7.0");
      await saved(page);
      const review = page.getByRole("region", { name: "Review of version 1", exact: true }).first();
      // the mean of 6.8 and 7.0 is 6.9
      await expect(review).toContainText("the report gives 7.2 as the average of 6.8, 7.0, and their mean is 6.9");
      await expect(review).toContainText("The report has 3 pages, and page 3 is missing.");
    });

    await test.step("the review names the deviation from clause and bid, and drafts a comment", async () => {
      const row = page.getByRole("table", { name: "Review of version 1" }).getByRole("row", { name: /^Tuft bind/ });
      await expect(row).toContainText("falls short");
      await expect(row).toContainText("weaker than bid");
      await expect(row).toContainText("at least 8 lbf (35.6 N), ASTM D1335");
      await page.getByRole("button", { name: /^Take the draft to work on/ }).click();
      const comment = page.getByLabel("Your comment instead: Tuft bind");
      await expect(comment).toHaveValue(/7\.2 lbf \(Sample report, p\. 2\) does not meet the limit/);
      await comment.fill(
        "Tuft bind is below the limit and below the bid. Hand in carpet of the production run that was bid.",
      );
      await page.getByLabel("Action", { exact: true }).selectOption("rejected");
      await page.getByLabel("Answered on").fill("2026-02-09");
      await saved(page);
      await expect(page.getByRole("listitem").filter({ hasText: "(the reviewer’s words)" })).toContainText(
        "Hand in carpet of the production run",
      );
      await expect(page.getByText("What was found points to Rejected.")).toBeVisible();
    });

    await test.step("the paper opens at the page", async () => {
      await page.getByLabel("Add the papers that were handed in").setInputFiles({
        name: "sample report.pdf",
        mimeType: "application/pdf",
        buffer: Buffer.from(pdf({ pages: 3 })),
      });
      await expect(page.getByText("“sample report.pdf”: Kept.")).toBeVisible();
      const table = page.getByRole("table", { name: "Review of version 1" });
      await expect(table.getByRole("link", { name: /^Sample report, page 2/ })).toHaveAttribute(
        "href",
        /\/view#page=2$/,
      );
      await accessible(page);
    });

    await test.step("promised against measured holds the row, its measurement and its deviations", async () => {
      await contents(page, "Promised against measured");
      const row = page
        .getByRole("table", { name: "Promised against measured" })
        .getByRole("row", { name: /^Tuft bind/ });
      await expect(row).toContainText("at least 8 lbf");
      await expect(row).toContainText("Rejected");
      await page.getByLabel("Next measured value").selectOption("tuft-bind");
      await page.getByRole("button", { name: "Add the value" }).click();
      const value = page.getByRole("group", { name: /Tuft bind$/ });
      await value.getByLabel("Value", { exact: true }).fill("7.4 lbf");
      await value.getByLabel("Test method").selectOption("d1335");
      await saved(page);
      await expect(row.getByRole("cell").nth(3)).toContainText("7.4 lbf");
      await expect(
        page.getByText(
          "The acceptance test gave 7.4 lbf, which does not meet what is specified, at least 8 lbf (35.6 N).",
        ),
      ).toBeVisible();
      await accessible(page);
    });

    await test.step("the facts leave as a table and as a document", async () => {
      const [csv] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("link", { name: "Table as CSV" }).click(),
      ]);
      expect(await readFile(await csv.path(), "utf8")).toContain("Tuft bind,ASTM D1335,at least 8 lbf (35.6 N)");
      const [facts] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("link", { name: "Facts for a warranty notice, PDF" }).click(),
      ]);
      expect((await readFile(await facts.path())).subarray(0, 5).toString()).toBe("%PDF-");
    });
  });
}

test("tickets come to a mass per area, and a substitute is weighed by the same evaluation", async ({
  page,
  browser,
}) => {
  const project = await demonstration(browser);

  await test.step("a ticket more: the sand comes to more than was bid", async () => {
    await page.goto(`${project}/submittals/deliveries`);
    await page.getByRole("button", { name: "Add a ticket" }).click();
    const ticket = page.getByRole("group", { name: "Ticket 4" });
    await ticket.getByLabel("Number on the ticket").fill("S 177");
    await ticket.getByLabel("Infill").selectOption("sand");
    await ticket.getByLabel("Mass").fill("60,000 lb");
    await ticket.getByLabel("Water", { exact: true }).fill("0 %");
    await saved(page);
    // (2 bag tickets dry + 60,000 lb - 1,200 lb left over) over 380 ft x 212 ft, worked by hand
    const dry = 88 * 2950 * 0.97 + 88 * 2950 * 0.975 + 60_000 - 1200;
    const row = page.getByRole("table", { name: "Delivered infill" }).getByRole("row", { name: /^Silica sand/ });
    await expect(row).toContainText(`${(dry / (380 * 212)).toFixed(2)} lb/ft²`);
    await expect(row).toContainText("more than wanted");
  });

  await test.step("a request for substitution shows what it would change", async () => {
    await page.goto(`${project}/submittals/substitutions`);
    await page.getByLabel("What is to be substituted").fill("Another carpet");
    await page.getByRole("button", { name: "Add the request" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Another carpet" })).toBeVisible();
    const effects = page.getByRole("table", { name: "Effect of the substitution" });
    const hardness = effects.getByRole("row", { name: /^Impact level as new/ });
    await expect(hardness).toContainText("the same");
    await page.getByLabel("Next value of the substitute").selectOption("g-max");
    await page.getByRole("button", { name: "Add the value" }).click();
    await page.getByLabel("Value", { exact: true }).fill("170 g");
    await page.getByLabel("Test method").selectOption("f1936");
    await page.getByLabel("Evidence").first().selectOption({ label: "Field-tested" });
    await saved(page);
    await expect(hardness).toContainText("170 g");
    await expect(effects.getByRole("row", { name: /^Place among the bids/ })).toContainText("fails a gate");
    const beside = page.getByRole("table", { name: /^Substitute beside bid A/ }).getByRole("row", { name: /^Impact/ });
    await expect(beside).toContainText("falls short");
    await expect(beside).toContainText("weaker than bid");
  });
});
