import ExcelJS from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { methodOf, propertyOf } from "#lib/claim";
import { readBidForm } from "#lib/document";
import { blank, expected, freeRow } from "../document/form-files";

// Outside check: a reader and writer of workbooks that shares no code with ours (ExcelJS 4.4) opens the blank form, and
// its own file, filled, is read by us.

/** A copy of the bytes in a buffer of its own, as the other library takes them. */
const bufferOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer as ArrayBuffer;

let workbook = new ExcelJS.Workbook();
beforeAll(async () => {
  workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(bufferOf(blank));
});

function sheet(name: string): ExcelJS.Worksheet {
  const found = workbook.getWorksheet(name);
  if (found === undefined) throw new RangeError(`no sheet ${name}`);
  return found;
}

/** The texts that the drop-down of a cell offers. */
function offered(name: string, address: string): readonly string[] {
  const [formula = ""] = sheet(name).getCell(address).dataValidation?.formulae ?? [];
  const [, column = "", first = "", last = ""] =
    /^Lists!\$([A-Z]+)\$(\d+):\$[A-Z]+\$(\d+)$/.exec(String(formula)) ?? [];
  return Array.from(
    { length: Number(last) - Number(first) + 1 },
    (_, at) => sheet("Lists").getCell(`${column}${Number(first) + at}`).text,
  );
}

describe("the blank form in another reader", () => {
  test("has its sheets, the lists out of sight", () => {
    expect(workbook.worksheets.map(({ name, state }) => [name, state])).toEqual([
      ["Instructions", "visible"],
      ["Claims", "visible"],
      ["Infill", "visible"],
      ["Prices", "visible"],
      ["Lists", "hidden"],
    ]);
    expect(sheet("Instructions").getCell("B5").text).toBe("project-1");
  });

  test("offers the methods of each property, the levels of evidence and the answers of a choice", () => {
    const asked = propertyOf("g-max");
    expect(offered("Claims", "E2")).toEqual([...asked.methods.map((id) => methodOf(id).designation), "not stated"]);
    expect(offered("Claims", "G2")).toEqual([
      "Stated",
      "Own test",
      "Accredited laboratory",
      "Field-tested",
      "Guaranteed",
    ]);
    const shockLayer = propertyOf("shock-layer");
    if (shockLayer.kind !== "choice") throw new RangeError("expected a choice");
    expect(offered("Claims", "D4")).toEqual(shockLayer.choices.map(({ label }) => label));
    expect(offered("Claims", `B${freeRow}`)).toContain("Pile height");
    expect(offered("Infill", "A4").slice(0, 2)).toEqual(["Sand from the river", "Silica sand, rounded"]);
    expect(offered("Prices", "D5")).toContain("Every year");
    expect(offered("Prices", "E5")).not.toContain("Owner’s addition to the bid");
  });

  test("lets only entries be changed and keeps them text", () => {
    for (const name of ["Instructions", "Claims", "Infill", "Prices"]) {
      expect(sheet(name).getCell("A1").protection?.locked, name).not.toBe(false);
      expect((sheet(name) as unknown as { sheetProtection?: { sheet?: boolean } }).sheetProtection?.sheet, name).toBe(
        true,
      );
    }
    for (const [name, address] of [
      ["Claims", "D2"],
      ["Claims", `J${freeRow}`],
      ["Claims", `B${freeRow}`],
      ["Infill", "B4"],
      ["Prices", "G5"],
      ["Instructions", "B7"],
    ] as const) {
      expect(sheet(name).getCell(address).protection?.locked, `${name} ${address}`).toBe(false);
      expect(sheet(name).getCell(address).numFmt, `${name} ${address}`).toBe("@");
    }
    expect(sheet("Claims").getCell("B2").protection?.locked).not.toBe(false);
  });

  test("keeps its headings in sight", () => {
    expect(sheet("Claims").views[0]).toMatchObject({ state: "frozen", ySplit: 1, xSplit: 2 });
  });
});

test("a form filled and saved by another writer reads as it was typed", async () => {
  const filled = new ExcelJS.Workbook();
  await filled.xlsx.load(bufferOf(blank));
  const put = (name: string, cells: Readonly<Record<string, ExcelJS.CellValue>>) => {
    for (const [address, value] of Object.entries(cells)) {
      const cell = filled.getWorksheet(name)?.getCell(address);
      if (cell === undefined) throw new RangeError(`no cell ${address}`);
      cell.value = value;
    }
  };
  put("Claims", {
    D2: "118 g",
    E2: "ASTM F1936",
    D3: { richText: [{ text: "2-1/4" }, { font: { bold: true }, text: " in" }] },
    J3: "a & b < c “d”\nsecond line",
    I3: 14,
    [`B${freeRow}`]: "Tuft bind",
    [`D${freeRow}`]: { formula: "4*2", result: 8 },
    [`B${freeRow + 1}`]: "Backing grab strength",
    [`D${freeRow + 1}`]: new Date(Date.UTC(2026, 2, 8)),
  });
  const dated = filled.getWorksheet("Claims")?.getCell(`D${freeRow + 1}`);
  if (dated !== undefined) dated.style = { ...dated.style, numFmt: "d-mmm" };
  put("Infill", { B1: "Mixed with each other", A4: "Cork", B4: "1-1/2 lb/ft²" });
  put("Prices", { A5: "Field", D5: "Once, at the base date", E5: "Investment", G5: "$388,000" });
  const form = readBidForm(new Uint8Array(await filled.xlsx.writeBuffer()), expected);
  if (!form.ok) throw new Error(JSON.stringify(form.problem));
  expect(form.value.claims.map(({ property, figure, page, words }) => [property, figure, page, words])).toEqual([
    ["g-max", "118 g", "", ""],
    ["pile-height", "2-1/4 in", "14", "a & b < c “d”\nsecond line"],
    ["tuft-bind", "", "", ""],
    ["grab-strength", "", "", ""],
  ]);
  expect(form.value.cells.filter(({ problem }) => problem !== null).map(({ address }) => address)).toEqual([
    `D${freeRow}`,
    `D${freeRow + 1}`,
  ]);
  expect(form.value).toMatchObject({
    placement: "blended",
    components: [{ material: "cork", arealDensity: "1-1/2 lb/ft²" }],
  });
  expect(form.value.prices).toEqual([expect.objectContaining({ amount: { kind: "lump-sum", price: "$388,000" } })]);
});
