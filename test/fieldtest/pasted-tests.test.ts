import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Pasted, pastedDepths, pastedDrops } from "#lib/fieldtest";
import type { Result } from "#lib/quantity";

const read = <Row>(found: Result<Pasted<Row>, string>): Pasted<Row> => {
  if (!found.ok) throw new Error(found.problem);
  return found.value;
};

describe("pastedDrops", () => {
  test.each([
    ["tabs", "\t"],
    ["commas", ","],
    ["semicolons", ";"],
  ])("reads rows with %s, with and without a heading", (_, separator) => {
    const rows = ["3|118|131|135", "Goal, west|120 g||131 g"].map((row) =>
      separator === ","
        ? row.replace("Goal, west", '"Goal, west"').replaceAll("|", separator)
        : row.replaceAll("|", separator),
    );
    const heading = ["Location", "Drop 1", "Drop 2", "Drop 3"].join(separator);
    const wanted = [
      { label: "3", drops: ["118", "131", "135"], note: "" },
      { label: "Goal, west", drops: ["120 g", "", "131 g"], note: "" },
    ];
    expect(read(pastedDrops(rows.join("\n")))).toEqual({ heading: [], rows: wanted, problems: [] });
    expect(read(pastedDrops([heading, ...rows, ""].join("\r\n")))).toMatchObject({ rows: wanted, problems: [] });
  });

  test("keeps what does not read, with its place and a sentence", () =>
    expect(read(pastedDrops("1\t118\t13l\t135\tafter rain\n\t120\t121\t122"))).toEqual({
      heading: [],
      rows: [
        { label: "1", drops: ["118", "13l", "135"], note: "after rain" },
        { label: "", drops: ["120", "121", "122"], note: "" },
      ],
      problems: [
        {
          row: 1,
          column: 3,
          read: "13l",
          message: "“l” is a unit of volume. Expected impact level, for instance in g.",
        },
        { row: 2, column: 1, read: "", message: "The location has no name. Expected one, for instance “3”." },
      ],
    }));

  test("loses nothing of any table", () => {
    const cell = fc.string({ unit: fc.constantFrom("1", "7", ".", "g", "x", " ", "°", '"', "-"), maxLength: 6 });
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 7 }), { minLength: 1, maxLength: 8 }), (table) => {
        fc.pre(!table.flat().some((text) => text.trim().startsWith('"')));
        const { heading, rows } = read(pastedDrops(table.map((row) => row.join("\t")).join("\n")));
        const kept = [...heading, ...rows.flatMap(({ label, drops, note }) => [label, ...drops, note])].join(" ");
        for (const text of table.flat()) expect(kept).toContain(text.trim());
      }),
    );
  });
});

describe("pastedDepths", () => {
  const units = { position: "m", depth: "mm" } as const;
  test("puts units behind bare numbers and leaves others alone", () =>
    expect(read(pastedDepths("x,y,depth\n10,-2.5,32\n40 ft,12 ft,1-1/4 in", units))).toEqual({
      heading: ["x", "y", "depth"],
      rows: [
        { x: "10 m", y: "-2.5 m", depth: "32 mm", note: "" },
        { x: "40 ft", y: "12 ft", depth: "1-1/4 in", note: "" },
      ],
      problems: [],
    }));
  test("names each cell that does not read", () =>
    expect(read(pastedDepths("10;20;deep\n;5;30", units)).problems.map(({ row, column }) => [row, column])).toEqual([
      [1, 3],
      [2, 1],
    ]));
  test("refuses more rows than it reads", () =>
    expect(pastedDepths("1,1,1\n".repeat(2001), units)).toEqual({
      ok: false,
      problem: "The block has 2,001 rows; at most 2,000 are read.",
    }));
});
