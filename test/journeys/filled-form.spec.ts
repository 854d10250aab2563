import type { Download, Page } from "@playwright/test";
import ExcelJS from "exceljs";
import { expect, startProject, test, toPage } from "./fixtures";

/** The line that says what became of the last change. */
const saving = (page: Page) => page.locator('[role="status"][data-saving]');

async function bytesOf(download: Download): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return Buffer.concat(chunks);
}

async function saved(page: Page, link: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: link }).click()]);
  return bytesOf(download);
}

type Cells = Readonly<Record<string, ExcelJS.CellValue>>;

/** Fills a form as a bidder does in a spreadsheet program. */
async function filled(form: Buffer, sheets: Readonly<Record<string, Cells>>): Promise<Buffer> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(form).buffer as ArrayBuffer);
  for (const [name, cells] of Object.entries(sheets)) {
    for (const [address, value] of Object.entries(cells)) {
      const cell = workbook.getWorksheet(name)?.getCell(address);
      if (cell === undefined) throw new RangeError(`no sheet ${name}`);
      cell.value = value;
    }
  }
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

/** Where a property stands in the form, as a bidder finds it: by its name. */
async function rowOf(form: Buffer, property: string): Promise<number> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(form).buffer as ArrayBuffer);
  let found = 0;
  workbook.getWorksheet("Claims")?.eachRow((row, number) => {
    if (row.getCell(2).text === property) found = number;
  });
  if (found === 0) throw new RangeError(`the form does not ask for ${property}`);
  return found;
}

async function send(page: Page, name: string, file: Buffer): Promise<void> {
  const mimeType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  await page.getByLabel("Filled bid form").setInputFiles({ name, mimeType, buffer: file });
  await page.getByRole("button", { name: "Read the form" }).click();
}

test("a bidder’s form becomes a bid, and a second one shows what changed", async ({ page }) => {
  await startProject(page, "Bids by form");
  await toPage(page, "Bids");
  const form = await saved(page, "Save the blank bid form");
  const [gMax, pile] = [await rowOf(form, "G-max"), await rowOf(form, "Pile height")];
  const entries = {
    Instructions: { B7: "Bidder by form", B8: "Sand and rubber in layers" },
    Claims: { [`D${gMax}`]: "118 g", [`E${gMax}`]: "ASTM F1936", [`F${gMax}`]: "new", [`D${pile}`]: 57 },
    Infill: { B1: "In layers, one on the other", A4: "Silica sand, rounded", B4: "6 lb/sf" },
    Prices: {
      ...{ B1: "$345,600", B2: "Three hundred forty-five thousand dollars" },
      ...{ A5: "The field", D5: "Once, at the base date", E5: "Investment", G5: "$6.00/ft²" },
      ...{ A6: "Logos", B6: "Alternate that adds", D6: "Once, at the base date", E6: "Investment", G6: "$6,750" },
    },
  };

  await page.getByRole("link", { name: "Add bid A from a filled form" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "A new bid from a filled form" })).toBeVisible();
  await send(page, "first.xlsx", await filled(form, entries));
  const troubled = page.getByRole("table", { name: "Cells that need attention" });
  await expect(troubled.getByRole("row", { name: `Claims D${pile} Pile height, Figure “57”` })).toContainText(
    "“57” has no unit. Expected length, for instance in in, mm, ft or cm. Write it as text with its unit, for instance “57 in”.",
  );
  await expect(page.getByRole("table", { name: "What the import does" })).toContainText("G-max, new");

  // the bidder puts the cell right and the form is read anew
  const right = { ...entries, Claims: { ...entries.Claims, [`D${pile}`]: "57 mm" } };
  await send(page, "first, put right.xlsx", await filled(form, right));
  await expect(page.getByRole("heading", { name: "What “first, put right.xlsx” says" })).toBeVisible();
  await expect(troubled).toBeHidden();
  await page.getByText("Every cell, as it was read", { exact: true }).first().click();
  await expect(
    page.getByRole("row", { name: `Claims D${pile} Pile height, Figure “57 mm” 2.24 in = 57.0 mm` }),
  ).toBeVisible();
  await page.getByRole("button", { name: "Add bid A as the form gives it" }).click();

  await expect(page.getByRole("heading", { level: 1, name: "Bidder by form" })).toBeVisible();
  const figures = page.getByLabel("Figure", { exact: true });
  await expect(figures).toHaveCount(2);
  await expect(figures.nth(0)).toHaveValue("57 mm");
  await expect(figures.nth(1)).toHaveValue("118 g");
  await expect(page.getByLabel("Mass per area")).toHaveValue("6 lb/sf");
  await expect(page.getByLabel("Sum as the bid form states it")).toHaveValue("$345,600");
  await expect(
    page.getByText("which is $345,000.00, and $345,600.00 in figures. Words go before figures."),
  ).toBeVisible();
  await page.getByText("Change price line 2", { exact: true }).click();
  await expect(page.getByRole("group", { name: /^Price line 2/ }).getByLabel("Place in the bid")).toHaveValue(
    "alternate-add",
  );

  await page.getByRole("link", { name: "Import a filled form" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Import a filled form into bid A" })).toBeVisible();
  await send(page, "again.xlsx", await filled(form, right));
  await expect(page.getByText("The form says what the bid holds already; there is nothing to import.")).toBeVisible();
  const changed = { ...right, Claims: { ...right.Claims, [`D${gMax}`]: "121 g" } };
  await send(page, "second.xlsx", await filled(form, changed));
  const changes = page.getByRole("table", { name: "What the import does" });
  await expect(changes.getByRole("row")).toHaveCount(2); // the headings and one change
  await expect(changes.getByRole("row").nth(1)).toContainText("Figure: “118 g” → “121 g”");
  await page.getByRole("button", { name: "Import into bid A" }).click();
  await expect(figures.nth(1)).toHaveValue("121 g");

  const csv = (await saved(page, "Save the claims for a spreadsheet")).toString("utf8");
  expect(csv.split("\r\n").slice(1)).toEqual([
    "Pile height,57 mm,not stated,not stated,Stated,,,,,,,,not-stated,not-stated,,,",
    "G-max,121 g,ASTM F1936,new,Stated,,,,,,,,not-stated,not-stated,,,",
    "",
  ]);
});

test("what a form says and can’t be read waits in the ledger; a form of another project changes nothing", async ({
  page,
}) => {
  await startProject(page, "Another project");
  await toPage(page, "Bids");
  const foreign = await filled(await saved(page, "Save the blank bid form"), { Claims: { D2: "118 g" } });
  await startProject(page, "Forms with slips");
  await toPage(page, "Bids");
  const form = await saved(page, "Save the blank bid form");
  const pile = await rowOf(form, "Pile height");
  await page.getByLabel("Bidder", { exact: true }).fill("Only bidder");
  await page.getByRole("button", { name: "Add bid A" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Only bidder" })).toBeVisible();
  const bid = page.url();

  await page.getByRole("link", { name: "Import a filled form" }).click();
  await send(page, "foreign.xlsx", foreign);
  await expect(page.getByRole("main").getByRole("alert")).toContainText(
    "“foreign.xlsx” was not imported. The form belongs to another project:",
  );
  await send(page, "letter.xlsx", Buffer.from("Dear owner"));
  await expect(page.getByRole("main").getByRole("alert")).toContainText(
    "“letter.xlsx” was not imported. The file is not a workbook.",
  );
  await send(page, "pictures.xlsx", Buffer.alloc(1_200_000));
  await expect(page.getByRole("main").getByRole("alert")).toContainText("The file has 1,200,000 bytes");

  await send(page, "slip.xlsx", await filled(form, { Claims: { [`D${pile}`]: "tall" } }));
  await expect(page.getByRole("table", { name: "Cells that need attention" })).toContainText(
    "No number was found in “tall”.",
  );
  await page.getByRole("link", { name: "Leave everything as it is" }).first().click();
  await expect(page.getByText("No claim is entered yet.")).toBeVisible();

  await page.goto(`${bid}/import`);
  await send(page, "slip.xlsx", await filled(form, { Claims: { [`D${pile}`]: "tall" } }));
  // somebody else changes the bid while the report is being read
  const other = await page.context().newPage();
  await other.goto(bid);
  await other.getByLabel("Kind of surface").fill("Rubber alone");
  await expect(saving(other)).toHaveText(/^Saved at /);
  await page.getByRole("button", { name: "Import into bid A" }).click();
  await expect(page.getByRole("region", { name: "A draft of yours" })).toContainText("tall");
  await expect(page.getByLabel("Kind of surface")).toHaveValue("Rubber alone");

  await page.goto(`${bid}/import`);
  await send(page, "slip.xlsx", await filled(form, { Claims: { [`D${pile}`]: "tall" } }));
  await page.getByRole("button", { name: "Import into bid A" }).click();
  await expect(page.getByLabel("Figure", { exact: true })).toHaveValue("tall");
  await expect(saving(page)).toHaveText("Kept as a draft: one entry can’t be read yet, so it doesn’t count so far.");
  await page.getByLabel("Figure", { exact: true }).fill("57 mm");
  await expect(saving(page)).toHaveText(/^Saved at /);
});
