import { describe, expect, test } from "vitest";
import { bid, claim, rowOf, sideBySide, textOf } from "./project";

const ids = (groups: ReturnType<typeof sideBySide>["groups"]) => groups.flatMap(({ rows }) => rows.map(({ id }) => id));

describe("claimed figures side by side", () => {
  test("stand in the reader's units beside the text as entered", () => {
    const bids = [bid("A", [claim("pile-height", "40 mm", { method: "d5823", document: "Report", page: "2" })])];
    const [us] = rowOf(sideBySide(bids).groups, "pile-height").cells;
    // 40 mm ÷ 25.4 mm/in = 1.5748 in, NIST SP 811
    expect(textOf(us)).toBe("1.57 in (new)");
    expect(us?.statements[0]?.facts).toContainEqual({ label: "As entered", text: "40 mm" });
    expect(us?.statements[0]?.facts).toContainEqual({ label: "Method", text: "ASTM D5823" });
    expect(us?.statements[0]?.facts).toContainEqual({ label: "Document", text: "Report, p. 2" });
    expect(textOf(rowOf(sideBySide(bids, "metric").groups, "pile-height").cells[0])).toBe("40.0 mm (new)");
  });

  test("are all shown where a bid makes several, each with its condition", () => {
    const { groups } = sideBySide([
      bid("A", [
        claim("g-max", "118 g", { id: "as-new", method: "f355-a" }),
        claim("g-max", "132 g", { id: "aged", method: "f1936", condition: "year 5" }),
      ]),
    ]);
    expect(textOf(rowOf(groups, "g-max").cells[0])).toBe("118 g (new); 132 g (year 5)");
  });

  test("say “not shown” where a bid is silent", () => {
    const { groups } = sideBySide([bid("A", [claim("pile-height", "2 in")]), bid("B", [])]);
    const cell = rowOf(groups, "pile-height").cells[1];
    expect([cell?.status, textOf(cell)]).toEqual(["not shown", ""]);
  });

  test("say “not shown” where a bid gives words for a figure", () => {
    const { groups } = sideBySide([bid("A", [claim("pile-height", "", { words: "tall" })])]);
    const [cell] = rowOf(groups, "pile-height").cells;
    expect([cell?.status, textOf(cell)]).toEqual(["not shown", "“tall” (new)"]);
  });

  test("say “over-claimed” where a stated total is more than its components", () => {
    const { groups } = sideBySide([
      bid("A", [claim("infill-total-areal-density", "6.6 lb/ft²", { method: "infill-weigh-tickets" })]),
      bid("B", [claim("infill-total-areal-density", "6 lb/ft²", { method: "infill-weigh-tickets" })]),
    ]);
    const [over, equal] = rowOf(groups, "infill-total-areal-density").cells;
    expect([over?.status, equal?.status]).toEqual(["over-claimed", null]);
    expect(over?.marks[0]?.title).toBe("The infill components do not add up to the stated total");
    expect(equal?.marks).toEqual([]);
  });
});

describe("figures by unlike methods", () => {
  // ASTM F1702, scope: figures by another mass, geometry or drop height are not comparable
  const { groups } = sideBySide([
    bid("A", [claim("g-max", "118 g", { method: "f355-a" })]),
    bid("B", [claim("g-max", "105 g", { method: "f1936" })]),
    bid("C", [claim("g-max", "68 g", { method: "clegg-on-turf" })]),
    bid("D", [claim("g-max", "60 g", { method: "" })]),
  ]);

  test("never stand on the line of the required method", () => {
    const { cells, apart } = rowOf(groups, "g-max");
    expect(apart).toBe(false);
    expect(cells.map((cell) => [textOf(cell), cell.status])).toEqual([
      ["118 g (new)", null],
      ["105 g (new)", null],
      ["", "not comparable"],
      ["", "not comparable"],
    ]);
  });

  test("stand on a line of their own for each kind of method, right below", () => {
    const order = ids(groups).filter((id) => id === "g-max" || id.startsWith("g-max."));
    expect(order).toEqual(["g-max", "g-max.clegg-on-turf", "g-max.not-stated"]);
    const own = rowOf(groups, "g-max.clegg-on-turf");
    expect([own.apart, own.label]).toEqual([true, "G-max, by Clegg hammer on synthetic turf"]);
    expect(own.cells.map((cell) => [textOf(cell), cell.status])).toEqual([
      ["", null],
      ["", null],
      ["68 g (new)", "not comparable"],
      ["", null],
    ]);
  });

  test("come with the reason and what to ask", () => {
    const lines = rowOf(groups, "g-max.not-stated").cells[3]?.lines;
    expect(lines).toEqual([
      "The method was not stated, so nobody can tell what the figure measures.",
      "Ask: Which test method stands behind the stated G-max, and in which report and on which page is it?",
    ]);
  });

  test("are held against the method most bids use where the owner asks for none", () => {
    const pull = (letter: string, method: string) => bid(letter, [claim("tuft-bind", "8 lbf", { method })]);
    const { groups: pulled } = sideBySide([pull("A", "iso-4919"), pull("B", "d1335"), pull("C", "d1335")]);
    expect(rowOf(pulled, "tuft-bind").under).toBe("Method: ASTM D1335, or alike.");
    expect(rowOf(pulled, "tuft-bind").cells.map(({ status }) => status)).toEqual(["not comparable", null, null]);
    expect(textOf(rowOf(pulled, "tuft-bind.iso-4919").cells[0])).toBe("8.0 lbf (new)");
  });

  test("do not part choices, which are read and not measured", () => {
    const statement = (letter: string, method: string) =>
      bid(letter, [claim("pfas-statement", "none-added-tested", { method })]);
    const { groups: read } = sideBySide([statement("A", "total-fluorine-combustion"), statement("B", "")]);
    expect(rowOf(read, "pfas-statement").cells.map(({ status }) => status)).toEqual([null, null]);
  });
});

describe("figures that follow from another claim", () => {
  const { groups } = sideBySide([
    bid("A", [claim("infill-total-areal-density", "6 lb/ft²", { method: "infill-weigh-tickets" })]),
    bid("B", [claim("infill-total-mass", "480,000 lb", { method: "infill-weigh-tickets" })]),
    bid("C", [claim("infill-total-mass", "480,000 lb")]),
  ]);

  test("stand on the line that the bid is silent on, and say what they follow from", () => {
    const { cells } = rowOf(groups, "infill-total-areal-density");
    // 480,000 lb ÷ 80,000 ft² = 6 lb/ft², derived
    expect(cells.map((cell) => [textOf(cell), cell.status])).toEqual([
      ["6.00 lb/ft² (new)", null],
      ["6.00 lb/ft² (from total infill mass)", null],
      // by a method that nobody names it can stand for nothing
      ["", "not shown"],
    ]);
    expect(cells[1]?.working?.formula).toBe("mass per area = mass ÷ area of the field");
    expect(cells[1]?.statements[0]).toMatchObject({ id: "infill-total-mass", level: 3 });
  });

  test("are none where an input of the conversion is missing, and the cell says which", () => {
    const { groups: hot } = sideBySide([
      bid("A", [claim("surface-temperature-rise", "40 °F", { method: "surface-thermometer" })]),
      bid("B", [claim("surface-temperature-peak", "160 °F", { method: "surface-thermometer" })]),
    ]);
    const cell = rowOf(hot, "surface-temperature-peak").cells[0];
    expect([textOf(cell), cell?.status]).toEqual(["", "not shown"]);
    expect(cell?.lines.join(" ")).toContain("the air temperature of the heat reading");
  });
});

describe("figures that compare with a caution", () => {
  test("say what to look at", () => {
    const { groups } = sideBySide([bid("A", [claim("g-max", "118 g", { method: "f1936", edition: "2010" })])]);
    const facts = rowOf(groups, "g-max").cells[0]?.statements[0]?.facts ?? [];
    const comparing = facts.find(({ label }) => label === "Comparing")?.text;
    // ASTM F1936-10 and F1936-19, catalogue entries: one edition came after the other
    expect(comparing).toContain("The report names the edition of 2010; the one of 2019 is newer.");
    expect(comparing).toContain("The bid does not say how warm the surface was.");
  });

  test("stand apart where another edition measures by another procedure", () => {
    const { groups } = sideBySide([
      bid("A", [claim("critical-fall-height", "1.3 m", { method: "f355-e", edition: "2016" })]),
      bid("B", [claim("critical-fall-height", "1.4 m", { method: "f355-e", edition: "2001" })]),
    ]);
    const own = rowOf(groups, "critical-fall-height.f355-e.edition");
    expect(own.label).toContain("by another edition of");
    expect(own.cells.map(({ status }) => status)).toEqual([null, "not comparable"]);
    expect(rowOf(groups, "critical-fall-height").cells.map(({ status }) => status)).toEqual([null, "not comparable"]);
    // ASTM F355-10a describes missile E, earlier editions do not (the year from memory)
    expect(own.cells[1]?.lines[0]).toContain("an earlier edition does not describe it");
  });
});

describe("derived figures side by side", () => {
  test("carry their working", () => {
    const { groups } = sideBySide([bid("A", [])]);
    const [cell] = rowOf(groups, "derived.stabilising-mass").cells;
    // 6 lb/ft² × 80,000 ft² = 480,000 lb, derived
    expect(textOf(cell)).toBe("480,000 lb");
    expect(cell?.working?.inputs.length).toBeGreaterThan(1);
  });

  test("say why where there is none", () => {
    const { groups } = sideBySide([bid("A", [claim("g-max", "68 g", { method: "clegg-on-turf" })])]);
    const [cell] = rowOf(groups, "derived.impact-level-as-new").cells;
    expect(cell?.status).toBe("not comparable");
    expect(cell?.lines.join(" ")).toContain("Ask for a figure by");
  });

  test("mark a finding that speaks of no single claim at the mass of the infill, and list it below", () => {
    const { groups } = sideBySide([bid("A", [claim("shock-layer", "none")], "3 lb/ft²")]);
    const titles = (id: string) => rowOf(groups, id).cells[0]?.marks.map(({ title }) => title);
    expect(titles("derived.infill-mass-per-area")).toEqual(["Light infill and no shock layer"]);
    expect(titles("derived.findings")).toEqual(["Light infill and no shock layer"]);
  });
});

test("one cell stands for each bid in every row, and no row comes twice", () => {
  const { groups } = sideBySide([
    bid("A", [claim("g-max", "118 g"), claim("infill-depth", "1 in")]),
    bid("B", [claim("pile-height", "2 in")]),
  ]);
  expect(groups.flatMap(({ rows }) => rows).every(({ cells }) => cells.length === 2)).toBe(true);
  expect(new Set(ids(groups)).size).toBe(ids(groups).length);
});

test("groups follow the order of the job and empty ones are left out", () => {
  const { groups } = sideBySide([bid("A", [claim("pile-height", "2 in"), claim("g-max", "118 g")])]);
  const labels = groups.map(({ label }) => label);
  expect(labels.slice(0, 3)).toEqual(["Infill and mass", "Impact", "Claimed: Carpet"]);
  expect(labels.slice(-2)).toEqual(["Cost", "Evaluation"]);
  expect(labels).not.toContain("Claimed: Ball and surface");
});

describe("units in the heads of rows", () => {
  const { groups } = sideBySide([
    bid("A", [claim("pile-height", "2 in", { method: "d5823" }), claim("shock-layer", "none")]),
  ]);

  test("are named once, and the cells hold the number", () => {
    const row = rowOf(groups, "pile-height");
    expect([row.label, row.unit]).toEqual(["Pile height", "in"]);
    expect(row.cells[0]?.statements[0]).toMatchObject({ text: "2.00", unit: " in", qualifier: "new" });
    expect(rowOf(groups, "derived.stabilising-mass").unit).toBe("lb");
    expect(rowOf(groups, "shock-layer").unit).toBe("");
  });

  test("hold for every figure of the row", () => {
    for (const { unit, cells } of groups.flatMap(({ rows }) => rows)) {
      for (const said of cells.flatMap(({ statements }) => statements)) {
        if (said.unit !== "") expect(`${unit} `).toContain(said.unit.trim().replace(/^per /, ""));
      }
    }
  });
});

describe("what answers changed", () => {
  const total = (figure: string) => claim("infill-total-areal-density", figure, { method: "infill-weigh-tickets" });
  const key = "components-against-total:infill-total-areal-density";
  const answered = (outcome: "settled" | "still open") => ({
    ...bid("A", [total("6.6 lb/ft²")]),
    answers: [
      {
        id: "answer-1",
        finding: key,
        asked: "Which is right?",
        answer: "The total holds a reserve that is laid later.",
        received: "2027-03-15",
        outcome,
        amended: [{ claim: "infill-total-areal-density", fields: { figure: "7 lb/ft²" } }],
      },
    ],
  });
  const cellOf = (outcome: "settled" | "still open") =>
    rowOf(sideBySide([answered(outcome)]).groups, "infill-total-areal-density").cells[0];

  test("stands with the claim as it was before", () =>
    expect(cellOf("still open")?.statements[0]?.facts).toContainEqual({
      label: "Before an answer",
      text: "Figure “7 lb/ft²”",
    }));

  test("a finding that an answer settled is marked so and the claim is no longer over-claimed", () => {
    const [open, settled] = [cellOf("still open"), cellOf("settled")];
    expect([open?.status, open?.marks.map(({ isSettled }) => isSettled)]).toEqual(["over-claimed", [false]]);
    expect([settled?.status, settled?.marks.map(({ isSettled }) => isSettled)]).toEqual([null, [true]]);
  });
});

test("findings in a cell stand from the most serious to the notes", () => {
  const { groups } = sideBySide([
    bid(
      "A",
      [
        claim("infill-total-areal-density", "6.6 lb/ft²", { method: "infill-weigh-tickets" }),
        claim("shock-layer", "none"),
        claim("pile-height", "2 in"),
      ],
      "3 lb/ft²",
    ),
  ]);
  const severities = rowOf(groups, "derived.findings").cells[0]?.marks.map(({ severity }) => severity) ?? [];
  const order = ["can't be true", "needs an answer", "note"];
  expect(severities.length).toBeGreaterThan(1);
  expect(severities).toEqual(severities.toSorted((one, other) => order.indexOf(one) - order.indexOf(other)));
});
