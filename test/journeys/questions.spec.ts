import { demonstration, expect, test } from "./fixtures";

test("an owner's representative sends questions, records an answer, and the bid is worked out anew", async ({
  page,
}) => {
  await page.goto("/");
  await page.getByRole("button", { name: /demonstration/i }).click();
  await page.getByRole("link", { name: "Bids", exact: true }).first().click();
  await page.getByRole("link", { name: "Bidder Alder (invented)" }).click();
  await page.getByRole("link", { name: /Letter with all questions/ }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(/Questions to the bidder/);
  const letter = page.getByRole("article", { name: "Questions on your bid" });
  await expect(letter.getByText("Your bid states a total infill of 10.20 lb/ft²")).toBeVisible();

  await page.getByRole("link", { name: /Record an answer to “The infill components do not add up/ }).click();
  const form = page.locator("form", { has: page.getByLabel("What the bidder answered") });
  await form.getByLabel("What the bidder answered").fill("Our total should read 9.5 psf; the form had a slip.");
  await form.getByLabel("Received on").fill("15 March");
  await form.getByLabel("Figure").fill("9.5 pounds");
  await form.getByRole("button", { name: "Record the answer" }).click();
  await expect(form.getByRole("status")).toContainText("Not recorded");
  await expect(form.getByLabel("What the bidder answered")).toHaveValue(/slip/);

  await page.reload();
  await expect(form.getByLabel("Figure")).toHaveValue("9.5 pounds");
  await form.getByLabel("Figure").fill("9.5 psf");
  await form.getByLabel("Received on").fill("2027-03-15");
  await form.getByRole("button", { name: "Record the answer" }).click();
  await expect(page.getByText("With it the finding is gone")).toBeVisible();
  await expect(page.getByText("before this answer: Figure “10.2 psf”")).toBeVisible();
  await expect(letter.getByText("Your bid states a total infill of 10.20 lb/ft²")).toBeHidden();
  await page.getByRole("link", { name: "Bid A", exact: true }).click();
  await expect(
    page.locator('input[value="9.5 psf"]').or(page.getByRole("definition").getByText("9.5 psf")).first(),
  ).toBeVisible();
});

test("an answer changes only what was typed, and never what somebody else saved meanwhile", async ({
  browser,
  page,
}) => {
  const questions = `${await demonstration(browser)}/bids/bid-a/questions`;
  const address = `${questions}?answer=components-against-total:total-infill`;
  await page.goto(address);
  const other = await page.context().newPage();
  await other.goto(address);
  const formOf = (at: typeof page) => at.locator("form", { has: at.getByLabel("What the bidder answered") });
  await formOf(other).getByLabel("What the bidder answered").fill("The page is 7.");
  await formOf(other).getByLabel("Page").fill("7");
  await formOf(other).getByLabel("Does that settle").selectOption("still open");
  await formOf(other).getByRole("button", { name: "Record the answer" }).click();
  await expect(other.getByText("It stands beside its finding below.")).toBeVisible();

  await formOf(page).getByLabel("What the bidder answered").fill("It should read 9.5 psf.");
  await formOf(page).getByLabel("Figure").fill("9.5 psf");
  await formOf(page).getByRole("button", { name: "Record the answer" }).click();
  await expect(formOf(page).getByRole("status")).toContainText("saved the bid in the meantime");
  await formOf(page).getByRole("button", { name: "Record the answer" }).click();
  await expect(page.getByText("With it the finding is gone")).toBeVisible();
  await page.goto(questions.replace(/\/questions$/, ""));
  await expect(page.locator("#total-infill").getByLabel("Figure")).toHaveValue("9.5 psf");
  await expect(page.locator("#total-infill").getByLabel("Page")).toHaveValue("7");
});
