import { describe, expect, test } from "vitest";
import { properties, propertyOf } from "#lib/claim";
import { blankBidForm, explainForm, readBidForm } from "#lib/document";
import { blank, expected, freeRow, partOf, rewritten, setting, textCell, typed, withCells } from "./form-files";

/** A form that reads, or the sentence that says why not. */
function read(file: Uint8Array) {
  const form = readBidForm(file, expected);
  if (!form.ok) throw new Error(explainForm(form.problem));
  return form.value;
}

/** The sentence with which a file is refused. */
function refused(file: Uint8Array): string {
  const form = readBidForm(file, expected);
  return form.ok ? "it was read" : explainForm(form.problem);
}

const claimRow = (label: string): number => {
  const asked = setting.wanted.map((id) => propertyOf(id).label);
  const order = [...asked, ...properties.map((each) => each.label).filter((each) => !asked.includes(each))];
  return order.indexOf(label) + 2;
};

describe("the blank form", () => {
  test("is the same bytes for the same project", async () => {
    expect(Buffer.compare(await blankBidForm(setting), blank)).toBe(0);
  });

  test("reads as a form that says nothing", () => {
    expect(read(blank)).toEqual({
      bidder: "",
      system: "",
      placement: "",
      claims: [],
      components: [],
      prices: [],
      statedTotal: "",
      statedTotalInWords: "",
      cells: [],
      remarks: [],
    });
  });

  test("has what is asked for first, in the owner's order", () => {
    const form = read(typed({ Claims: { D2: "118 g", D3: "2-1/4 in" } }));
    expect(form.claims.map(({ property }) => property)).toEqual(["g-max", "pile-height"]);
  });
});

describe("a filled form", () => {
  test("gives claims, infill and prices exactly as typed", () => {
    const form = read(
      typed({
        Instructions: { B7: "First bidder", B8: "Sand and rubber in layers" },
        Claims: {
          D2: "118 g",
          E2: "ASTM F1936",
          F2: "new",
          G2: "Accredited laboratory",
          H2: "Report 14",
          I2: "3",
          J2: "“as soft as grass”",
          D3: "2-1/4 in",
          [`B${freeRow}`]: "G-max",
          [`D${freeRow}`]: "150 g",
          [`F${freeRow}`]: "year 5",
        },
        Infill: {
          B1: "In layers, one on the other",
          A4: "Sand from the river",
          B4: "6 lb/sf",
          A5: "Cork",
          B5: "3/8 lb/ft²",
        },
        Prices: {
          A5: "Carpet",
          D5: "A part with a life, renewed until the study ends",
          G5: "$4.85/ft²",
          O5: "10 years",
          Q5: "$0.85/ft²",
        },
      }),
    );
    expect(form).toMatchObject({ bidder: "First bidder", system: "Sand and rubber in layers", placement: "layered" });
    expect(form.claims).toEqual([
      expect.objectContaining({
        id: "form-2",
        property: "g-max",
        figure: "118 g",
        method: "f1936",
        condition: "new",
        evidence: "accredited-laboratory",
        document: "Report 14",
        page: "3",
        words: "“as soft as grass”",
        note: "",
      }),
      expect.objectContaining({
        property: "pile-height",
        figure: "2-1/4 in",
        method: "not-stated",
        evidence: "stated",
      }),
      expect.objectContaining({ property: "g-max", figure: "150 g", condition: "year 5" }),
    ]);
    expect(form.components).toEqual([
      expect.objectContaining({ material: "local-sand", arealDensity: "6 lb/sf", bulkDensity: "" }),
      expect.objectContaining({ material: "cork", arealDensity: "3/8 lb/ft²" }),
    ]);
    expect(form.prices).toEqual([
      expect.objectContaining({
        kind: "replacement-chain",
        label: "Carpet",
        givenBy: "bid",
        amount: { kind: "per-area", price: "$4.85/ft²" },
        life: "10 years",
        removal: { kind: "per-area", price: "$0.85/ft²" },
      }),
    ]);
    expect(form.cells.filter(({ problem }) => problem !== null)).toEqual([]);
    // 2.25 in × 25.4 mm/in = 57.15 mm (NIST SP 811)
    expect(form.cells.find(({ address, sheet }) => sheet === "Claims" && address === "D3")).toEqual({
      sheet: "Claims",
      address: "D3",
      about: "Pile height",
      heading: "Figure",
      text: "2-1/4 in",
      reading: "2.25 in = 57.2 mm",
      problem: null,
    });
  });

  test("takes every way in which a price can be paid", () => {
    const form = read(
      typed({
        Prices: {
          A5: "Base",
          D5: "Once, at the base date",
          E5: "Investment",
          G5: "$388,000",
          A6: "Seam work",
          D6: "Once, in a later year",
          E6: "Operation and maintenance",
          G6: "$5,000",
          J6: "5",
          A7: "Top-up",
          D7: "Every year",
          E7: "Operation and maintenance",
          F7: "4,000 lb",
          G7: "$0.38/lb",
          M7: "9",
          A8: "Deep cleaning",
          D8: "Every so many years",
          E8: "Operation and maintenance",
          G8: "$3,200",
          K8: "2 years",
          N8: "10",
        },
      }),
    );
    expect(form.cells.filter(({ problem }) => problem !== null)).toEqual([]);
    expect(form.prices).toEqual([
      expect.objectContaining({
        kind: "at-base-date",
        category: "investment",
        amount: { kind: "lump-sum", price: "$388,000" },
      }),
      expect.objectContaining({ kind: "in-year", year: "5" }),
      expect.objectContaining({
        kind: "yearly",
        to: "9",
        amount: { kind: "per-unit", quantity: "4,000 lb", unitPrice: "$0.38/lb" },
      }),
      expect.objectContaining({ kind: "periodic", every: "2 years", except: "10" }),
    ]);
  });

  test("keeps a price out of the count whose way of payment is not known, with its text in the note", () => {
    const form = read(typed({ Prices: { A5: "Base", G5: "$388,000" } }));
    expect(form.prices).toEqual([
      expect.objectContaining({
        kind: "at-base-date",
        amount: { kind: "lump-sum", price: "" },
        note: "Also in row 5 of the filled form: Price: “$388,000”.",
      }),
    ]);
    expect(form.cells.find(({ address }) => address === "D5")?.problem).toBe(
      "Nothing was read. Expected one of “Once, at the base date”, “Once, in a later year”, “Every year”, “Every so many years”, “A part with a life, renewed until the study ends”. Until then the price stands in the note of the line and does not count.",
    );
  });

  test("asks how the materials lie where it gives materials", () => {
    const form = read(typed({ Infill: { A4: "Cork", B4: "1 lb/ft²" } }));
    expect(form.cells.find(({ address }) => address === "B1")?.problem).toBe(
      "Say whether the infill is layered or blended.",
    );
  });

  test("names a material that no list has and keeps its text", () => {
    const form = read(typed({ Infill: { B1: "Mixed with each other", A4: "Crushed glass", B4: "1 lb/ft²" } }));
    expect(form.components[0]?.material).toBe("Crushed glass");
    expect(form.cells.find(({ address }) => address === "A4")?.problem).toBe(
      "“Crushed glass” is not a material of the list. Expected one of the list, or one that the brief describes as the owner's own.",
    );
  });

  test("says of cells outside the form and of other sheets that they were not read", () => {
    const file = rewritten(blank, partOf("Claims"), (xml) =>
      xml.replace("</row>", `${textCell("T1", "see our letter")}</row>`),
    );
    expect(read(file).remarks).toEqual([
      "Cell T1 of sheet “Claims” stands outside the form and was not read: “see our letter”.",
    ]);
  });
});

describe("a cell that holds no typed text", () => {
  const problemOf = (cell: string, address = "D3") =>
    read(withCells(blank, "Claims", { [address]: cell })).cells.find((each) => each.address === address)?.problem;

  test("a number names the unit that is missing", () => {
    expect(problemOf('<c r="D3"><v>12</v></c>')).toBe(
      "“12” has no unit. Expected length, for instance in in, mm, ft or cm. Write it as text with its unit, for instance “12 in”.",
    );
  });

  test("a number of fifteen digits is read as a spreadsheet shows it", () => {
    const form = read(withCells(blank, "Claims", { D3: '<c r="D3"><v>12.300000000000001</v></c>' }));
    expect(form.claims[0]?.figure).toBe("12.3");
  });

  test("a page number is read as its digits", () => {
    const form = read(withCells(typed({ Claims: { D3: "2 in" } }), "Claims", { I3: '<c r="I3"><v>14</v></c>' }));
    expect(form.claims[0]?.page).toBe("14");
    expect(form.cells.every(({ problem }) => problem === null)).toBe(true);
  });

  test.each([
    ["plain", '<c r="D3"><f>B2*2</f><v>12</v></c>', "=B2*2"],
    ["with a text result", '<c r="D3" t="str"><f>"12"&amp;" mm"</f><v>12 mm</v></c>', '="12"&" mm"'],
    ["shared, without text of its own", '<c r="D3"><f t="shared" si="0"/><v>12</v></c>', "="],
    ["of a data table, without text", '<c r="D3"><f t="dataTable" ref="D3:D4" r1="A1"/><v>12</v></c>', "="],
    ["array", '<c r="D3"><f t="array" ref="D3">SUM(A1:A2)</f><v>12</v></c>', "=SUM(A1:A2)"],
    ["behind an inline text", '<c r="D3" t="inlineStr"><f>A1</f><is><t>12 mm</t></is></c>', "=A1"],
  ])("a formula, %s, is refused and its result does not count", (_, cell, text) => {
    const file = withCells(blank, "Claims", { D3: cell });
    expect(problemOf(cell)).toBe(
      `The formula “${text}” was found. Expected a typed value: neither a formula nor the result stored with it is read.`,
    );
    expect(read(file).claims).toEqual([
      expect.objectContaining({
        figure: "",
        note: `Cell D3 of sheet “Claims” of the filled form was not read; it held “${text}”.`,
      }),
    ]);
  });

  test("a date is refused, whatever program wrote its format", () => {
    // 46089 is 8 March 2026: 46023 is 1 January 2026, a known serial date; derived
    const dated = (format: string) =>
      rewritten(withCells(blank, "Claims", { D3: '<c r="D3" s="1"><v>46089</v></c>' }), "xl/styles.xml", (xml) =>
        xml
          .replace(/<numFmts.*?<\/numFmts>/, "")
          .replace(
            /(<styleSheet[^>]*>)/,
            `$1<numFmts count="1"><numFmt numFmtId="170" formatCode="${format.replaceAll('"', "&quot;").replaceAll("$", "$$$$")}"/></numFmts>`,
          )
          .replace(/(<cellXfs[^>]*><xf .*?<xf numFmtId=")\d+"/, '$1170"'),
      );
    for (const format of ["d/m", "yyyy\\-mm\\-dd", "[$-409]mmmm d", "[h]:mm"]) {
      const cell = read(dated(format)).cells.find(({ address }) => address === "D3");
      expect(cell?.problem, format).toBe(
        "The date 2026-03-08 was found. Expected typed text, for instance “3/8 in”, in a cell with text format: without it a spreadsheet turns some entries into dates.",
      );
    }
    for (const format of ['0.00 "days"', "#,##0", "[Red]0.0"]) {
      expect(read(dated(format)).claims[0]?.figure, format).toBe("46089");
    }
  });

  test("TRUE and errors are refused", () => {
    expect(problemOf('<c r="D3" t="b"><v>1</v></c>')).toBe("The value TRUE was found. Expected typed text.");
    expect(problemOf('<c r="D3" t="e"><v>#DIV/0!</v></c>')).toBe(
      "The error #DIV/0! was found. Expected a typed value.",
    );
  });
});

describe("a form that is not this one", () => {
  test("belongs to another project", async () => {
    const other = await blankBidForm({
      ...setting,
      owner: { ...setting.owner, key: "project-2", name: "Middle school" },
    });
    expect(refused(other)).toBe(
      "The form belongs to another project: cell B5 of sheet “Instructions” reads “project-2”, for “Middle school”. Expected the key of this project, “project-1”.",
    );
  });

  test("has another version", () => {
    const file = typed({ Instructions: { B4: "0.9" } });
    expect(refused(file)).toMatch(
      /^The form is of version “0.9” \(cell B4 of sheet “Instructions”\)\. Expected version “1\.[0-9a-f]{8}”: save a blank form anew and copy the entries into it\.$/,
    );
  });

  test("lacks a sheet or has it under another name", () => {
    const file = rewritten(blank, "xl/workbook.xml", (xml) => xml.replace('name="Claims"', 'name="Claims 2"'));
    expect(refused(file)).toBe(
      "The workbook has no sheet “Claims”. It has “Instructions”, “Infill”, “Prices”, “Claims 2”, “Lists”. Expected the sheets of the blank bid form under their own names.",
    );
  });

  test("has another heading", () => {
    expect(refused(typed({ Claims: { D1: "Value" } }))).toBe(
      "Cell D1 of sheet “Claims” reads “Value”. Expected “Figure”, as the blank form has it.",
    );
  });

  test("has cells merged among its entries", () => {
    const file = rewritten(blank, partOf("Claims"), (xml) =>
      xml.replace("<dataValidations", '<mergeCells count="1"><mergeCell ref="D5:D9"/></mergeCells><dataValidations'),
    );
    expect(refused(file)).toBe(
      "Cells D5:D9 of sheet “Claims” are merged into one. Expected one entry a cell: take the merging back.",
    );
  });
});

test("every property has a row that its name finds", () => {
  const cells = Object.fromEntries(properties.map(({ label }) => [`J${claimRow(label)}`, "as the bid says"]));
  const form = read(typed({ Claims: cells }));
  expect(form.claims.map(({ property }) => property).toSorted()).toEqual(properties.map(({ id }) => id).toSorted());
});
