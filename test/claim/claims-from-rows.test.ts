import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { claimSchema, claimsFromRows, layoutOf } from "#lib/claim";

describe("claimsFromRows", () => {
  test("finds the columns by their headings, in any order and case", () => {
    const { claims, unreadHeadings } = claimsFromRows([
      ["PAGE", "Test method", "Remark of the clerk", "property", "Figure"],
      ["12", "astm d5823", "looks fine", "PILE HEIGHT", "2-1/4 in"],
    ]);
    expect(unreadHeadings).toEqual(["Remark of the clerk"]);
    expect(claims).toEqual([
      {
        row: 2,
        problems: [],
        claim: {
          id: "pasted-2",
          property: "pile-height",
          figure: "2-1/4 in",
          method: "d5823",
          condition: "not stated",
          evidence: "stated",
          document: "",
          page: "12",
          words: "",
          note: "",
          edition: "",
          date: "",
          laboratory: "",
          accreditation: "not-stated",
          build: "not-stated",
          testField: "",
          fieldCount: "",
          spread: "",
        },
      },
    ]);
  });

  test("reads the stated order of columns without headings", () => {
    const claim = ["g-max", "95 g", "f1936", "new", "Field-tested", "Report 14", "3", "Gmax 95", "check points"];
    const row = [...claim, "F1936-19", "May 2024", "County test house", "yes", "The build of this bid", "North", "1"];
    const [first] = claimsFromRows([row], (at) => `bid-a-${at}`).claims;
    expect(first?.claim).toEqual({
      id: "bid-a-1",
      property: "g-max",
      figure: "95 g",
      method: "f1936",
      condition: "new",
      evidence: "field-tested",
      document: "Report 14",
      page: "3",
      words: "Gmax 95",
      note: "check points",
      edition: "F1936-19",
      date: "May 2024",
      laboratory: "County test house",
      accreditation: "accredited",
      build: "bid-build",
      testField: "North",
      fieldCount: "1",
      spread: "",
    });
  });

  test("keeps a row it can't read, as written, and names each cell in the way", () => {
    const [first] = claimsFromRows([["Pile hight", "tall", "by eye", "", "sure"]]).claims;
    expect(first?.claim).toMatchObject({ property: "Pile hight", figure: "tall", method: "by eye", evidence: "sure" });
    expect(first?.problems.map(({ field }) => field)).toEqual(["property", "method", "evidence"]);
    expect(first?.problems[0]?.message).toBe(
      "“Pile hight” is not a property in the catalogue. Did you mean Pile height, Free pile height or Pile height kept after wear?",
    );
  });

  test("reports cells beyond the last column", () => {
    const [first] = claimsFromRows([
      ["Property", "Figure"],
      ["gauge", "1/2 in", "", "extra"],
    ]).claims;
    expect(first?.problems).toEqual([
      { field: "row", message: "The row has more cells than the table has columns; “extra” was not read." },
    ]);
  });

  test("does not let a second column under one heading replace the first", () => {
    const { claims, unreadHeadings } = claimsFromRows([
      ["Property", "Figure", "Value"],
      ["gauge", "1/2 in", "3/8 in"],
    ]);
    expect(claims[0]?.claim.figure).toBe("1/2 in");
    expect(unreadHeadings).toEqual(["Value"]);
  });

  test("counts blank rows and drops no other", () => {
    const cell = fc.oneof(fc.constant(""), fc.constant(" "), fc.string({ maxLength: 12 }));
    const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 11 }), { maxLength: 8 });
    fc.assert(
      fc.property(table, (rows) => {
        const body = [["Property", "Figure", "Method"], ...rows];
        const { claims, blankRows } = claimsFromRows(body);
        expect(claims.length + blankRows).toBe(rows.length);
        for (const { claim, problems } of claims) {
          const parsed = claimSchema.safeParse(claim).success;
          expect(parsed || problems.length > 0).toBe(true);
        }
      }),
    );
  });
});

describe("columns that a person has named", () => {
  const rows = [
    ["G-max", "118 g", "ignored", "new"],
    ["Pile height", "2 in", "ignored too", "new"],
  ];

  test("are read as said, and the others are left to the caller", () => {
    const layout = { columns: ["property", "figure", null, "condition"], headingRows: 0 } as const;
    const { claims, unreadHeadings } = claimsFromRows(rows, undefined, layout);
    expect(claims.map(({ claim: { property, figure, condition } }) => [property, figure, condition])).toEqual([
      ["g-max", "118 g", "new"],
      ["pile-height", "2 in", "new"],
    ]);
    expect(unreadHeadings).toEqual([]);
  });

  test("may have headings that name no field", () => {
    const layout = { columns: ["property", "figure", null, "condition"], headingRows: 1 } as const;
    const { claims, unreadHeadings } = claimsFromRows(
      [["Was", "Wert", "Farbe", "Zustand"], ...rows],
      undefined,
      layout,
    );
    expect(claims).toHaveLength(2);
    expect(unreadHeadings).toEqual(["Farbe"]);
  });

  test("nobody has named: the layout that is proposed reads the rows alike", () =>
    fc.assert(
      fc.property(fc.array(fc.array(fc.string(), { maxLength: 5 }), { maxLength: 5 }), (table) => {
        expect(claimsFromRows(table, undefined, layoutOf(table))).toEqual(claimsFromRows(table));
      }),
    ));
});
