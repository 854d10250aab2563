import ExcelJS from "exceljs";
import { demonstration, expect, test } from "./fixtures";

test("the cost page gives the audit workbook as a file of its own", async ({ page, browser, request }) => {
  const project = await demonstration(browser);
  await page.goto(`${project}/cost`);
  const link = page.getByRole("link", { name: "Audit workbook (XLSX) with live formulas" });
  const [download] = await Promise.all([page.waitForEvent("download"), link.click()]);
  expect(download.suggestedFilename()).toMatch(/^audit-workbook-[a-z0-9-]+\.xlsx$/);

  const answer = await request.get(`${project}/audit-workbook`);
  expect(answer.status()).toBe(200);
  expect(answer.headers()).toMatchObject({
    "content-type": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "content-disposition": `attachment; filename="${download.suggestedFilename()}"`,
    "cache-control": "no-store",
    "x-content-type-options": "nosniff",
    "cross-origin-resource-policy": "same-origin",
  });
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(new Uint8Array(await answer.body()).buffer as ArrayBuffer);
  expect(book.worksheets.map(({ name }) => name)).toContain("Yearly flows");
});

test("there is no audit workbook of a project that is not there", async ({ request }) => {
  const answer = await request.get("/project/no-such-project/audit-workbook");
  expect(answer.status()).toBe(404);
  expect(answer.headers()).toMatchObject({ "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" });
});
