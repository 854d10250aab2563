import type { Page } from "@playwright/test";
import { expect, startProject, test } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');

const saved = (page: Page) => expect(saving(page)).toHaveText(/^Saved at /);

async function addBid(page: Page, { bidder, system }: { bidder: string; system: string }): Promise<void> {
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Bids" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Bids" })).toBeVisible();
  await page.getByLabel("Bidder", { exact: true }).fill(bidder);
  await page.getByRole("button", { name: /^Add bid / }).click();
  await expect(page.getByRole("heading", { level: 1, name: bidder })).toBeVisible();
  await page.getByLabel("Kind of surface").fill(system);
}

async function addComponent(page: Page, { material, mass }: { material: string; mass: string }): Promise<void> {
  const before = await page.getByRole("group", { name: /^Component / }).count();
  await page.getByRole("button", { name: "Add a component" }).click();
  const component = page.getByRole("group", { name: `Component ${before + 1}` });
  await component.getByLabel("Material").selectOption({ label: material });
  await component.getByLabel("Mass per area").fill(mass);
}

/** Takes criteria of the library, under their headings there. */
async function addCriteria(page: Page, entries: readonly (readonly [heading: string, label: string])[]): Promise<void> {
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Requirements" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Requirements" })).toBeVisible();
  await page.getByText("Add from the library").click();
  for (const [heading, label] of entries) {
    const library = page.getByRole("region", { name: `Library: ${heading}` });
    await library.getByText(label, { exact: true }).click();
    await library.getByRole("button", { name: new RegExp(`Add this criterion.*${label}`) }).click();
    await expect(page.getByText(`Added “${label}” at the end of the list.`)).toBeVisible();
  }
  // what comes beside a criterion that weighs starts without weight
  const [, second] = entries;
  const added = page.getByRole("region", { name: "Criteria", exact: true }).getByRole("listitem");
  const last = added.filter({ has: page.getByRole("button", { name: `Move ${second?.[1]} up` }) });
  await last.locator("summary").click();
  await last.getByLabel("Weight in points").fill("40");
  await saved(page);
}

type ClaimEntry = Readonly<{ property: string; figure: string; method?: string; condition?: string }>;

async function addClaim(page: Page, { property, figure, method, condition }: ClaimEntry): Promise<void> {
  const row = await page.getByLabel("Test method").count();
  await page.getByLabel("Property of the next claim").selectOption(property);
  await page.getByRole("button", { name: "Add a claim" }).click();
  await expect(page.getByLabel("Figure", { exact: true }).nth(row)).toBeFocused();
  await page.keyboard.type(figure);
  if (method !== undefined) await page.getByLabel("Test method").nth(row).fill(method);
  if (condition !== undefined) await page.getByLabel("Condition", { exact: true }).nth(row).fill(condition);
}

async function addPrice(page: Page, { label, amount }: { label: string; amount: string }): Promise<void> {
  await page.getByRole("button", { name: "Once, at the base date" }).click();
  const line = page.getByRole("group", { name: /^Price line 1/ });
  await line.getByLabel("What it is for").fill(label);
  await line.getByLabel("Price: how it is given").selectOption({ label: "Per area of the field" });
  await line.getByLabel("Price per area").fill(amount);
}

test("an owner’s representative enters three bids in mixed units and reads their order", async ({ page }) => {
  test.setTimeout(180_000);
  await startProject(page, "Three bids in mixed units");
  await page.getByLabel("Purpose").fill("Replace the worn field of the high school.");
  await page.getByLabel("Length", { exact: true }).fill("110 m");
  await page.getByLabel("Width", { exact: true }).fill("70 m");
  await saved(page);
  await addCriteria(page, [
    ["Infill that stays", "Infill mass per area"],
    ["Upkeep and cost", "Equivalent annual cost per area"],
  ]);

  await addBid(page, { bidder: "First bidder", system: "Sand and rubber in layers" });
  await addComponent(page, { material: "Silica sand, rounded", mass: "1.234,5 lb/sf" });
  await addComponent(page, { material: "Tyre rubber, ground at ambient temperature", mass: "3 lb/sf" });
  await addClaim(page, { property: "g-max", figure: "105 g", method: "ASTM F1936", condition: "new" });
  await addClaim(page, { property: "warranty-years", figure: "12 years" });
  await addClaim(page, { property: "pile-height", figure: "9 kg", method: "ASTM D5823", condition: "new" });
  await addPrice(page, { label: "The field", amount: "$6.00/ft²" });

  await expect(saving(page)).toHaveText("Kept as a draft: 2 entries can’t be read yet, so this doesn’t count so far.");
  await expect(
    page.getByText("“kg” is a unit of mass. Expected length, for instance in in, mm, ft or cm."),
  ).toBeVisible();
  await expect(
    page.getByText(
      "“1.234,5” can be read as 1,234.5 or as 1.2345. Write the one you mean, with a comma between thousands and a point before decimals.",
    ),
  ).toBeVisible();

  await page.getByLabel("Mass per area").first().fill("6 lb/sf");
  await page.getByLabel("Figure", { exact: true }).nth(2).fill("2-1/4 in");
  await saved(page);
  // 2.25 in × 25.4 mm/in = 57.15 mm; 6 lb/ft² × 4.882428 kg/m² = 29.29 kg/m² (NIST SP 811)
  await expect(page.getByText("= 2.25 in = 57.2 mm", { exact: true })).toBeVisible();
  await expect(page.getByText("= 6.00 lb/ft² = 29.3 kg/m²", { exact: true })).toBeVisible();

  await addBid(page, { bidder: "Second bidder", system: "Rubber alone" });
  await addComponent(page, { material: "Tyre rubber, ground at ambient temperature", mass: "20 kg/m²" });
  await addClaim(page, { property: "g-max", figure: "150 g", method: "ASTM F1936", condition: "new" });
  await addClaim(page, { property: "warranty-years", figure: "96 months" });
  await addClaim(page, { property: "pile-height", figure: "60 mm" });
  await addPrice(page, { label: "The field", amount: "$90/m²" });
  await saved(page);
  // 20 kg/m² ÷ 4.882428 kg/m² per lb/ft² = 4.096 lb/ft² (NIST SP 811)
  await expect(page.getByText("= 4.10 lb/ft² = 20.0 kg/m²", { exact: true })).toBeVisible();

  await addBid(page, { bidder: "Third bidder", system: "A little rubber" });
  await addComponent(page, { material: "Tyre rubber, ground at ambient temperature", mass: "1.5 psf" });
  await page.getByText("Paste rows from a spreadsheet").click();
  await page
    .getByLabel("Pasted rows")
    .fill(
      [
        "Property\tFigure\tTest method\tCondition\tEvidence\tColour",
        "G-max\t180 g\tASTM F1936\tnew\taccredited laboratory\tgreen",
        "Warranty length\t6 yr\t\t\tguaranteed\t",
        "Pile height\t5 cm\tASTM D5823\tnew\t\t",
      ].join("\n"),
    );
  const preview = page.getByRole("table", { name: "How the rows were read" });
  await expect(preview.getByRole("row", { name: /^4 Pile height 5 cm/ })).toContainText("= 1.97 in = 50.0 mm");
  const unread = page.getByText("No field is called “Colour”; what stands there goes into the note.");
  await expect(unread).toBeVisible();
  await page.getByText("Say which column holds what").click();
  await page.getByLabel(/^Column 6/).selectOption("words");
  await expect(unread).toBeHidden();
  await page.getByLabel(/^Column 6/).selectOption("into-note");
  await expect(unread).toBeVisible();
  await page.getByRole("button", { name: "Add these 3 claims" }).click();
  await expect(page.getByText("Note: Also in the pasted row: Colour: “green”")).toBeVisible();
  await addPrice(page, { label: "The field", amount: "$12/ft²" });
  await saved(page);

  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Evaluation" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Evaluation" })).toBeVisible();
  // derived: the first bid has more infill and costs less than the second, and the second than the third
  await expect(page.getByRole("listitem").filter({ hasText: "of 100 points" })).toHaveText([
    /^1: bid A.*First bidder/s,
    /^2: bid B.*Second bidder/s,
    /^3: bid C.*Third bidder/s,
  ]);
});

test("a figure that can’t be read outlives a reload, sent to the server or not", async ({ page, complaints }) => {
  test.setTimeout(120_000);
  await startProject(page, "Nothing is lost");
  await addBid(page, { bidder: "Only bidder", system: "Sand and rubber" });
  await addClaim(page, { property: "pile-height", figure: "tall" });
  await expect(saving(page)).toHaveText("Kept as a draft: one entry can’t be read yet, so it doesn’t count so far.");
  await page.reload();
  const figure = page.getByLabel("Figure", { exact: true });
  await expect(figure).toHaveValue("tall");
  await expect(saving(page)).toHaveText("Kept as a draft: one entry can’t be read yet, so it doesn’t count so far.");
  await expect(page.getByText("No number was found in “tall”.")).toBeVisible();

  await page.context().setOffline(true);
  await figure.fill("very tall");
  await expect(saving(page)).toHaveText(/^Not saved: the server can’t be reached\./);
  await page.context().setOffline(false);
  const expected = "ERR_INTERNET_DISCONNECTED"; // the browser's own line on the save that found no server
  complaints.splice(0, complaints.length, ...complaints.filter((line) => !line.includes(expected)));
  await page.reload();
  await expect(figure).toHaveValue("very tall");

  await figure.fill("60 mm");
  await saved(page);
  await page.reload();
  await expect(figure).toHaveValue("60 mm");
});

test("rows are entered, walked, taken out and put back by keyboard alone", async ({ page }) => {
  test.setTimeout(120_000);
  await startProject(page, "By keyboard");
  await addBid(page, { bidder: "Only bidder", system: "Sand and rubber" });
  await addClaim(page, { property: "pile-height", figure: "60 mm" });
  await page.keyboard.press("Enter"); // the last row: adds one
  const properties = page.getByLabel("Property", { exact: true });
  await expect(properties.nth(1)).toBeFocused();
  await page.keyboard.type("abrasiv"); // the beginning is enough where one property alone has it
  await page.keyboard.press("Tab");
  await expect(properties.nth(1)).toHaveValue("Abrasiveness index");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("g-max");
  await page.keyboard.press("Tab");
  const figures = page.getByLabel("Figure", { exact: true });
  await expect(figures.nth(1)).toBeFocused();
  await page.keyboard.type("118 g");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("ArrowUp");
  await expect(figures.nth(0)).toBeFocused();
  await page.keyboard.press("ArrowDown");
  await expect(figures.nth(1)).toBeFocused();

  await page.getByRole("button", { name: "Remove claim 1", exact: true }).focus();
  await page.keyboard.press("Enter");
  await expect(figures).toHaveCount(1);
  await expect(figures).toHaveValue("118 g");
  await expect(page.getByRole("button", { name: "Undo" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(figures).toHaveCount(2);
  await expect(figures.nth(0)).toHaveValue("60 mm");
  await expect(properties.nth(1)).toHaveValue("G-max");
  await saved(page);
});

test("a bid is removed and brought back, and the project leaves as a file", async ({ page }) => {
  await startProject(page, "Élite field / 2027");
  await addBid(page, { bidder: "Only bidder", system: "Sand and rubber" });
  await saved(page);
  await page.getByRole("navigation", { name: "Contents" }).getByRole("link", { name: "Bids" }).click();
  await page.getByRole("button", { name: "Remove bid A" }).click();
  await expect(page.getByText("There is no bid yet.")).toBeVisible();
  await page.getByRole("button", { name: "Bring the bid back" }).click();
  await expect(page.getByRole("heading", { level: 2, name: "Only bidder" })).toBeVisible();

  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Save the project file" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("elite-field-2027.evenfield.json");
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  const file: unknown = JSON.parse(Buffer.concat(chunks).toString("utf8"));
  expect(file).toMatchObject({
    format: "evenfield-project",
    bids: [{ letter: "A", bidder: "Only bidder", system: "Sand and rubber" }],
  });
});
