import { describe, expect, test } from "vitest";
import { bid, claim, rowOf, sideBySide } from "./project";

const ids = (groups: ReturnType<typeof sideBySide>["groups"]) => groups.flatMap(({ rows }) => rows.map(({ id }) => id));

describe("claimed figures side by side", () => {
  test("stand in the reader's units beside the text as entered", () => {
    const bids = [bid("A", [claim("pile-height", "40 mm", { method: "d5823", document: "Report", page: "2" })])];
    const [us] = rowOf(sideBySide(bids).groups, "pile-height").cells;
    // 40 mm ÷ 25.4 mm/in = 1.5748 in, NIST SP 811
    expect(us?.text).toBe("1.57 in (new)");
    expect(us?.statements[0]?.facts).toContainEqual({ label: "As entered", text: "40 mm" });
    expect(us?.statements[0]?.facts).toContainEqual({ label: "Method", text: "ASTM D5823" });
    expect(us?.statements[0]?.facts).toContainEqual({ label: "Document", text: "Report, p. 2" });
    expect(rowOf(sideBySide(bids, "metric").groups, "pile-height").cells[0]?.text).toBe("40.0 mm (new)");
  });

  test("are all shown where a bid makes several, each with its condition", () => {
    const { groups } = sideBySide([
      bid("A", [
        claim("g-max", "118 g", { id: "as-new", method: "f355-a" }),
        claim("g-max", "132 g", { id: "aged", method: "f1936", condition: "year 5" }),
      ]),
    ]);
    expect(rowOf(groups, "g-max").cells[0]?.text).toBe("118 g (new); 132 g (year 5)");
  });

  test("say “not shown” where a bid is silent", () => {
    const { groups } = sideBySide([bid("A", [claim("pile-height", "2 in")]), bid("B", [])]);
    const cell = rowOf(groups, "pile-height").cells[1];
    expect([cell?.status, cell?.text]).toEqual(["not shown", ""]);
  });

  test("say “not shown” where a bid gives words for a figure", () => {
    const { groups } = sideBySide([bid("A", [claim("pile-height", "", { words: "tall" })])]);
    const [cell] = rowOf(groups, "pile-height").cells;
    expect([cell?.status, cell?.text]).toEqual(["not shown", "“tall” (new)"]);
  });

  test("say “over-claimed” where a stated total is more than its components", () => {
    const { groups } = sideBySide([
      bid("A", [claim("infill-total-areal-density", "6.6 lb/ft²", { method: "infill-weigh-tickets" })]),
      bid("B", [claim("infill-total-areal-density", "6 lb/ft²", { method: "infill-weigh-tickets" })]),
    ]);
    const [over, equal] = rowOf(groups, "infill-total-areal-density").cells;
    expect([over?.status, equal?.status]).toEqual(["over-claimed", null]);
    expect(over?.statements[0]?.marks[0]?.title).toBe("The infill components do not add up to the stated total");
    expect(equal?.statements[0]?.marks).toEqual([]);
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
    expect(cells.map(({ text, status }) => [text, status])).toEqual([
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
    expect(own.cells.map(({ text, status }) => [text, status])).toEqual([
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
    expect(rowOf(pulled, "tuft-bind.iso-4919").cells[0]?.text).toBe("8.0 lbf (new)");
  });

  test("do not part choices, which are read and not measured", () => {
    const statement = (letter: string, method: string) =>
      bid(letter, [claim("pfas-statement", "none-added-tested", { method })]);
    const { groups: read } = sideBySide([statement("A", "total-fluorine-combustion"), statement("B", "")]);
    expect(rowOf(read, "pfas-statement").cells.map(({ status }) => status)).toEqual([null, null]);
  });
});

describe("derived figures side by side", () => {
  test("carry their working", () => {
    const { groups } = sideBySide([bid("A", [])]);
    const [cell] = rowOf(groups, "stabilising-mass").cells;
    // 6 lb/ft² × 80,000 ft² = 480,000 lb, derived
    expect(cell?.text).toBe("480,000 lb");
    expect(cell?.working?.inputs.length).toBeGreaterThan(1);
  });

  test("say why where there is none", () => {
    const { groups } = sideBySide([bid("A", [claim("g-max", "68 g", { method: "clegg-on-turf" })])]);
    const [cell] = rowOf(groups, "impact-level-as-new").cells;
    expect(cell?.status).toBe("not comparable");
    expect(cell?.lines.join(" ")).toContain("Ask for a figure by");
  });

  test("mark a finding that speaks of no single claim at the mass of the infill, and list it below", () => {
    const { groups } = sideBySide([bid("A", [claim("shock-layer", "none")], "3 lb/ft²")]);
    const titles = (id: string) => rowOf(groups, id).cells[0]?.marks.map(({ title }) => title);
    expect(titles("infill-mass-per-area")).toEqual(["Light infill and no shock layer"]);
    expect(titles("findings")).toEqual(["Light infill and no shock layer"]);
  });
});

test("one cell stands for each bid in every row, and no row comes twice", () => {
  const { groups } = sideBySide([bid("A", [claim("g-max", "118 g")]), bid("B", [claim("pile-height", "2 in")])]);
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
