import exceljs from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { auditWorkbook } from "#lib/document";
import { evaluate, type Project } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { attackedProject, demonstrationProject, everythingProject, hostileTexts } from "./audit-projects";

const sheetNames = ["Read me", "Inputs", "Levelling", "Yearly flows", "Lives", "Discounting", "Totals", "Scores"];

const made = (project: Project) => auditWorkbook(project, evaluate(project), plainDate("2027-03-01"));

async function opened(bytes: Uint8Array): Promise<exceljs.Workbook> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(Uint8Array.from(bytes).buffer as unknown as exceljs.Buffer);
  return book;
}

type Found = Readonly<{ sheet: string; address: string; cell: exceljs.Cell }>;

function cellsOf(book: exceljs.Workbook, name: string): readonly Found[] {
  const found: Found[] = [];
  book.getWorksheet(name)?.eachRow((row) => {
    row.eachCell((cell) => found.push({ sheet: name, address: cell.address, cell }));
  });
  return found;
}

const formulaOf = ({ value }: exceljs.Cell): string | null =>
  typeof value === "object" && value !== null && "formula" in value ? (value.formula ?? "") : null;

const everything = everythingProject();
const bytes = await made(everything);
const book = await opened(bytes);
const cells = sheetNames.flatMap((name) => cellsOf(book, name));
const formulas = cells.flatMap(({ sheet, address, cell }) => {
  const formula = formulaOf(cell);
  return formula === null ? [] : [{ sheet, address, formula, cell }];
});

describe("the audit workbook", () => {
  test("has its sheets in the order in which they follow from each other", () => {
    expect(book.worksheets.map(({ name }) => name)).toEqual(sheetNames);
  });

  test("names the project, its base date and the day of the file", () => {
    const readMe = cellsOf(book, "Read me").map(({ cell }) => cell.value);
    for (const text of ["Worked example", "2026-07-01", "2027-03-01"]) expect(readMe).toContain(text);
  });

  test("gives the same bytes for the same project", async () => {
    expect(await made(everythingProject())).toEqual(bytes);
  });

  test("holds no results and asks the program to work everything out when it opens", () => {
    expect(formulas.length).toBeGreaterThan(4000);
    expect(formulas.filter(({ cell }) => cell.result !== undefined)).toEqual([]);
    for (const part of Object.values(unzipSync(bytes))) expect(strFromU8(part)).not.toMatch(/<\/f>\s*<v/);
    expect(strFromU8(unzipSync(bytes)["xl/workbook.xml"] ?? new Uint8Array())).toContain('fullCalcOnLoad="1"');
  });

  test("types numbers where they may be changed and nowhere else", () => {
    const typed = (sheet: string) => cellsOf(book, sheet).filter(({ cell }) => typeof cell.value === "number");
    const isYear = ({ cell }: Found) => Number(cell.row) === 4 && Number(cell.col) >= 11;
    for (const sheet of ["Yearly flows", "Lives", "Discounting"])
      expect(typed(sheet).filter((one) => !isYear(one))).toEqual([]);
    expect(typed("Levelling")).toEqual([]);
    const totals = book.getWorksheet("Totals");
    const labelOf = ({ cell }: Found) => String(totals?.getCell(Number(cell.row), 1).value);
    expect(typed("Totals").filter((one) => !labelOf(one).endsWith(", app"))).toEqual([]);
  });

  test("has a formula for every year of every part of every line, over the inputs", () => {
    const flows = book.getWorksheet("Yearly flows");
    let parts = 0;
    flows?.eachRow((row, number) => {
      if (number <= 4 || typeof row.getCell(4).value !== "string") return;
      parts += 1;
      for (let year = 0; year <= 20; year += 1) {
        const formula = formulaOf(row.getCell(11 + year)) ?? "";
        expect(formula).toMatch(String(row.getCell(1).value).startsWith("Sum ") ? /^SUMIFS\(/ : /Inputs!\$/);
      }
    });
    expect(parts).toBeGreaterThan(40);
  });

  test("holds every kind of line, of price and of origin", () => {
    const inputs = cellsOf(book, "Inputs").map(({ cell }) => String(cell.value));
    for (const text of [
      ...["Once, at the base date", "Once, in a later year", "Every year", "Every so many years"],
      ...["A part with a life, renewed until the study ends", "lump sum", "by area", "by quantity", "share of a sum"],
      ...["Bid", "Bid, as handed in", "Plug: the owner’s figure", "Plug: median of the other bids"],
      ...["Technical link, computed: Grooming", "Technical link, stated: Freight of the infill"],
      ...["The owner’s own alternative", "The owner has not accepted this alternate."],
    ])
      expect(inputs).toContain(text);
  });

  test("names only cells that are there, and refers to no other file", () => {
    const names = (
      strFromU8(unzipSync(bytes)["xl/workbook.xml"] ?? new Uint8Array()).match(/<definedName name="[^"]+">[^<]+/g) ?? []
    ).map((text) => /name="([^"]+)">(.+)$/.exec(text) ?? []);
    expect(names.length).toBe(16);
    for (const [, , range] of names) expect(range).toMatch(/^Inputs!\$B\$\d+$/);
    for (const { formula } of formulas) {
      expect(formula).not.toMatch(/\[|https?:|file:|DDE|WEBSERVICE|HYPERLINK|INDIRECT|CALL\(/i);
      for (const [, sheet] of formula.matchAll(/(?:'([^']+)'|\b[A-Za-z]+)!/g))
        if (sheet) expect(sheetNames).toContain(sheet);
    }
    const parts = unzipSync(bytes);
    expect(Object.keys(parts).filter((name) => /external|vba|macro|media|drawing|connection/i.test(name))).toEqual([]);
    for (const [name, part] of Object.entries(parts))
      if (name.endsWith(".rels")) expect(strFromU8(part)).not.toContain("TargetMode");
  });

  test("uses only functions that every spreadsheet program has had for long", () => {
    const used = new Set(
      formulas.flatMap(({ formula }) => [...formula.matchAll(/\b([A-Z][A-Z0-9.]+)\(/g)].map(([, name]) => name)),
    );
    const portable = [
      ...["AND", "COUNTIF", "COUNTIFS", "FIND", "IF", "INDEX", "INT", "ISERROR", "ISNUMBER", "LOOKUP", "MATCH", "MAX"],
      ...["MEDIAN", "MIN", "MOD", "ROUND", "SUBSTITUTE", "SUM", "SUMIFS", "SUMPRODUCT"],
    ];
    expect([...used].filter((name) => !portable.includes(name ?? ""))).toEqual([]);
  });

  test("is short enough in every formula", () => {
    expect(Math.max(...formulas.map(({ formula }) => formula.length))).toBeLessThan(8192); // the least limit among programs
  });

  test("is made for a project without bids and criteria, too", async () => {
    const project = everythingProject(
      {},
      { bids: [], costing: {}, requirements: { ...demonstrationTexts(), criteria: [] } },
    );
    const empty = await opened(await made(project));
    expect(empty.worksheets.length).toBe(sheetNames.length);
  });
});

/** The requirements of the worked example as text, without its criteria. */
function demonstrationTexts(): object {
  return {
    impact: {
      ...{ method: "f355-a", targetWindow: { low: "90 g", high: "115 g" }, limit: "200 g", limitSource: "ASTM F1936" },
      ...{
        testLocations: "8",
        horizonYears: "8 years",
        ownersDrift: { low: "1 g/year", likely: "3 g/year", high: "6 g/year" },
      },
      ...{ chanceLevel: "95 %", depthSensitivity: { kind: "common-practice" } },
    },
  };
}

describe("text from outside in the audit workbook", () => {
  test("stays text in text cells, and no formula changes for it", async () => {
    const own = await opened(await made(demonstrationProject()));
    const other = await opened(await made(attackedProject()));
    const formulasOf = (one: exceljs.Workbook) =>
      sheetNames.flatMap((name) =>
        cellsOf(one, name).flatMap(({ address, cell }) => {
          const formula = formulaOf(cell);
          return formula === null ? [] : [`${name} ${address} ${formula}`];
        }),
      );
    expect(formulasOf(other)).toEqual(formulasOf(own));
    const found = sheetNames.flatMap((name) => cellsOf(other, name));
    expect(found.filter(({ cell }) => cell.hyperlink !== undefined)).toEqual([]);
    for (const { shown } of hostileTexts) {
      const standing = found.filter(({ cell }) => cell.value === shown);
      expect(standing.length, shown).toBeGreaterThan(10);
      expect(standing.every(({ cell }) => cell.type === exceljs.ValueType.String)).toBe(true);
    }
  });
});
