import { createHash } from "node:crypto";
import type { Page } from "@playwright/test";
import { expect, startProject, test, toPage } from "./fixtures";

/** The line that says what became of the last change. */
const saved = (page: Page) => expect(page.locator('[role="status"][data-saving]')).toHaveText(/^Saved at /);

/** Goes to one of the pages about the specification. */
async function toPart(page: Page, name: string, heading = name): Promise<void> {
  await page.getByRole("navigation", { name: "Pages about the specification" }).getByRole("link", { name }).click();
  await expect(page.getByRole("heading", { level: 1, name: heading })).toBeVisible();
}

/** A file of the specification, as a person would save it. */
async function fileOf(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name }).click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return Buffer.concat(chunks);
}

test("an empty project comes to an issued section, its addendum, a reviewed submittal and a row of promises", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await startProject(page, "Section from nothing");
  await page.getByLabel("Heat, frost and rain in words").fill("Dry summers, frost in winter.");
  await saved(page);

  await test.step("a criterion becomes a clause that is typed once", async () => {
    await toPage(page, "Requirements");
    await page.getByLabel("Measure of the next criterion").selectOption({ label: "Impact level as new" });
    await page.getByRole("button", { name: "Add a criterion" }).click();
    await page.getByLabel("Gate", { exact: true }).selectOption({ label: "Below" });
    await page.getByLabel("Limit", { exact: true }).fill("200 g");
    await page.getByLabel("Reason").fill("A field that starts too hard leaves no room for wear.");
    await saved(page);
    await toPage(page, "Specification");
    const left = page.getByRole("region", { name: "What the text leaves out" });
    await expect(left).toContainText("ASTM F1936 for impact level as new has no edition.");
    await left.getByRole("link", { name: /Mend it.*has no edition/ }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Clauses" })).toBeVisible();
    const impact = page
      .getByRole("listitem")
      .filter({ hasText: /^Impact level as new/ })
      .first();
    await expect(impact.getByText("below 200 g").first()).toBeVisible();
    await impact.getByLabel("Edition").fill("current edition");
    await impact.getByLabel("Condition").fill("new");
    await impact.getByLabel("The limit holds for").selectOption({ label: "Each point or sample" });
    await impact.getByLabel("Test at completion").fill("the laboratory that the Owner engages tests ten places");
    await impact.getByLabel("Remedy when missed").fill("even out the infill and test again within 20 days");
    await impact.getByLabel("Source of the limit").fill("ASTM F1936");
    await saved(page);
  });

  await test.step("a clause of the architect's own, with an entry that can't be read put right", async () => {
    await page.getByLabel("A clause that no criterion uses, about").selectOption({ label: "Tuft bind, by ASTM D1335" });
    await page.getByRole("button", { name: "Add a clause" }).click();
    const own = page.getByRole("listitem").filter({ has: page.getByLabel("Name of the clause") });
    await own.getByLabel("Kind of limit").selectOption({ label: "At least" });
    await own.getByLabel("Limit", { exact: true }).fill("8 lb/ft²");
    await expect(own.getByText(/Expected/)).toBeVisible();
    await own.getByLabel("Limit", { exact: true }).fill("8 lbf");
    await own.getByLabel("Reason").fill("Tufts that come out leave bare strips.");
    await own.getByLabel("Edition").fill("current edition");
    await own.getByLabel("Condition").fill("new");
    await own.getByLabel("The limit holds for").selectOption({ label: "The average of all readings" });
    await own.getByLabel("Test at completion").fill("none beyond the report, since the test destroys the sample");
    await own.getByLabel("Remedy when missed").fill("carpet of that production run is replaced");
    await own.getByLabel("Source of the limit").fill("common practice, no source");
    await own.getByLabel("Test reports").check();
    await saved(page);
  });

  await test.step("blanks are filled in, and the draft has none left", async () => {
    await toPart(page, "Choices and blanks");
    const blanks = page.getByRole("region", { name: "Blanks", exact: true });
    const entries = {
      "Requests for substitution": "10 days",
      "Lowest temperature for adhesive work": "40 °F",
      "Limits that hold through the warranty": "G-max below 200 at each point by ASTM F1936, current edition",
      "Days within which the warrantor looks": "5 days",
      "Days within which the warrantor mends": "20 days",
      "Places for flood tests": "3",
      "Least drainage rate": "10 in/h",
      "Places at which infill depth": "40",
      "Care by the Contractor": "12 months",
    };
    for (const [label, text] of Object.entries(entries)) await blanks.getByLabel(label).fill(text);
    await page.getByLabel("Plan for the end of life").check();
    await saved(page);
    await toPart(page, "Draft", "Specification");
    const draft = page.getByRole("region", { name: /^The draft: / });
    await expect(draft).toContainText("Tuft bind: at least 8 lbf (35.6 N)");
    await expect(draft).toContainText("Plan for the end of life");
    await expect(draft).not.toContainText("to be filled in");
    await expect(page.getByText("Every limit has its method, edition, tolerance, test and remedy")).toBeVisible();
  });

  await test.step("a section received from elsewhere is read for words that favour", async () => {
    await toPart(page, "Neutral language");
    await page
      .getByLabel("The text")
      .fill(
        "Carpet shall have a patented backing or be the exclusive product of one maker. Seams are closed and flat.",
      );
    const read = page.getByRole("region", { name: "A text from elsewhere" });
    await expect(read.getByRole("status")).toHaveText("2 sentences read, 2 notes.");
    await expect(read).toContainText("2 CFR 200.319");
    await expect(read).toContainText("patented");
  });

  await test.step("systems known from public data show what the limits shut out", async () => {
    await toPart(page, "Competition");
    for (const [index, [label, level, bind]] of [
      ["Layered sand and rubber", "110 g", "9 lbf"],
      ["Cork over a shock layer", "95 g", "7 lbf"],
    ].entries()) {
      await page.getByRole("button", { name: "Add a system" }).click();
      const system = page.getByRole("group", { name: `System ${index + 1}` });
      await system.getByLabel("Label").fill(label ?? "");
      await system.getByLabel("Source").fill("data sheet open to the public, page 2");
      await system.getByLabel("Impact level as new").fill(level ?? "");
      await system.getByLabel("Tuft bind").fill(bind ?? "");
    }
    await saved(page);
    await page.reload();
    const says = page.getByRole("region", { name: "What the check says" });
    await expect(says).toContainText("Of 2 known systems, 1 could meet all clauses together.");
    await expect(says).toContainText("moving the lower limit of “Tuft bind” from 8.0 lbf to 7.0 lbf");
  });

  await test.step("it is given out and sealed, and what changes later is an addendum", async () => {
    await toPart(page, "Versions");
    await page.getByRole("button", { name: "Give out as “Issue for bids”" }).click();
    const issue = page.getByRole("region", { name: "Issue for bids" });
    await expect(issue).toContainText("Worked out anew just now, both are the same.");
    const text = await fileOf(page, "Plain text of Issue for bids");
    await expect(issue).toContainText(createHash("sha256").update(text).digest("hex"));
    expect(text.toString("utf8")).toContain("Tuft bind: at least 8 lbf (35.6 N)");
    await expect(page.getByText("There is nothing to give out: no word differs from Issue for bids.")).toBeVisible();

    await toPart(page, "Clauses");
    await page.locator("main summary", { hasText: "Tuft bind" }).click();
    await page.getByLabel("Limit", { exact: true }).fill("7 lbf");
    await saved(page);
    await toPart(page, "Versions");
    await expect(page.getByText("Criteria or clauses have changed since Issue for bids")).toBeVisible();
    const next = page.getByRole("region", { name: /The draft against/ });
    await expect(next.getByRole("deletion")).toHaveText(["8", "35.6"]);
    await expect(next.getByRole("insertion")).toHaveText(["7", "31.1"]);
    await page.getByRole("button", { name: "Give out as “Addendum 1”" }).click();
    await expect(page.getByRole("form", { name: "Addendum 1" }).getByRole("alert")).toHaveText(
      "Say in a sentence why the addendum is made.",
    );
    await page.getByLabel("Reason").fill("A bidder asked; 7 lbf admits one more system and keeps tufts in place.");
    await page.getByRole("button", { name: "Give out as “Addendum 1”" }).click();
    const addendum = page.getByRole("region", { name: "Addendum 1" });
    await expect(addendum).toContainText("A bidder asked");
    await expect(page.getByText("stand as Addendum 1 gives them. They are not frozen yet.")).toBeVisible();
    await addendum.getByText("What it changes against Issue for bids").click();
    await expect(addendum.getByRole("insertion")).toHaveText(["7", "31.1"]);
    // the text given out first stays as it was
    expect((await fileOf(page, "Plain text of Issue for bids")).equals(text)).toBe(true);
  });

  await test.step("the representative holds what is handed in against that section and the bid", async () => {
    await toPage(page, "Bids");
    await page.getByLabel("Bidder", { exact: true }).fill("First bidder");
    await page.getByRole("button", { name: /^Add bid / }).click();
    await page.getByLabel("Property of the next claim").selectOption("tuft-bind");
    await page.getByRole("button", { name: "Add a claim" }).click();
    await page.getByLabel("Figure", { exact: true }).fill("9 lbf");
    await page.getByLabel("Test method").fill("ASTM D1335");
    await page.getByLabel("Document", { exact: true }).fill("Laboratory report");
    await saved(page);
    await toPage(page, "Submittals");
    await page.getByRole("link", { name: "Say whose bid was taken" }).click();
    await page.getByLabel("Bid that was taken").selectOption({ index: 1 });
    await saved(page);
    await page.getByRole("link", { name: "Register", exact: true }).click();
    await page.getByRole("button", { name: /^Add (\d+ lines|1 line) from the specification$/ }).click();
    await page.getByRole("link", { name: "Test reports: Tuft bind" }).click();
    await page.getByRole("button", { name: "Something came" }).click();
    await page.getByLabel("Received on").fill("2026-02-02");
    await page.getByRole("button", { name: "Add the value" }).click();
    await page.getByLabel("Value", { exact: true }).fill("6.5 lbf");
    await page.getByLabel("Test method").selectOption("d1335");
    await page.getByLabel("Document", { exact: true }).fill("Second report");
    await saved(page);
    const reviewed = page.getByRole("table", { name: "Review of version 1" }).getByRole("row", { name: /^Tuft bind/ });
    await expect(reviewed).toContainText("at least 7 lbf (31.1 N)");
    await expect(reviewed).toContainText("falls short");
    await expect(reviewed).toContainText("weaker than bid");
  });

  await test.step("promised against measured has its row, from the section to the finished field", async () => {
    await toPage(page, "Promised against measured");
    await page.getByLabel("Next measured value").selectOption("tuft-bind");
    await page.getByRole("button", { name: "Add the value" }).click();
    const value = page.getByRole("group", { name: /Tuft bind$/ });
    await value.getByLabel("Value", { exact: true }).fill("6.4 lbf");
    await value.getByLabel("Test method").selectOption("d1335");
    await saved(page);
    const cells = page
      .getByRole("table", { name: "Promised against measured" })
      .getByRole("row", { name: /^Tuft bind/ })
      .getByRole("cell");
    for (const [column, figure] of ["at least 7 lbf (31.1 N)", "9.0 lbf", "6.5 lbf", "6.4 lbf"].entries())
      await expect(cells.nth(column)).toContainText(figure);
  });
});
