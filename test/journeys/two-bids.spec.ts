import { demonstration, expect, test } from "./fixtures";

test("an owner's representative asks what would make two bids cost the same, and where to look for it", async ({
  browser,
  page,
}) => {
  await page.goto(`${await demonstration(browser)}/cost/two-bids`);
  await page.getByRole("combobox", { name: "From" }).selectOption({ label: "Bid A, Bidder Alder (invented)" });
  await page.getByRole("combobox", { name: "To" }).selectOption({ label: "Bid C, Bidder Cedar (invented)" });
  await page.getByRole("button", { name: "Show these two" }).click();
  await expect(page.getByRole("heading", { name: "From bid A to bid C" })).toBeVisible();

  const ties = page.getByRole("table", { name: "Where the two bids cost the same, the nearest first" });
  await ties
    .getByRole("row", { name: /^A Carpet and infill \$4\.85/ })
    .getByRole("link")
    .click();
  await expect(
    page.getByText(/cost the same at \$5\.\d+\/ft² \(116\.\d+ %\), looked for from 0 % to 300 %/),
  ).toBeVisible();

  await page.getByRole("textbox", { name: "Look from" }).fill("50 %");
  await page.getByRole("textbox", { name: "to", exact: true }).fill("110 %");
  await page.getByRole("button", { name: "Look there" }).click();
  await expect(page.getByText(/^Never from 50 % to 110 %: there bid A costs less throughout\./)).toBeVisible();

  await page.getByRole("textbox", { name: "Look from" }).fill("half");
  await page.getByRole("button", { name: "Look there" }).click();
  await expect(page.getByRole("main").getByRole("alert")).toHaveText(
    "“half” was read; expected 0 % to 2,000 % of the entered price. The usual values are shown.",
  );
});
