import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { GateRule } from "#lib/criteria";
import { parseExact } from "#lib/quantity";
import {
  competition,
  competitionSentences,
  type KnownSystem,
  type LimitClause,
  type SystemFigure,
} from "#lib/requirement";

function exact(text: string) {
  const parsed = parseExact("length", text);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
}

const clause = (id: string, limit: GateRule | null): LimitClause => ({ id, label: id, dimension: "length", limit });
const at = (low: number, high = low): SystemFigure => ({
  kind: "figure",
  span: { low: low / 1000, high: high / 1000 },
});
const system = (id: string, figures: Readonly<Record<string, SystemFigure>>): KnownSystem => ({
  id,
  label: id,
  figures,
});

const clauses = [
  clause("pile", { kind: "at-least", limit: exact("50 mm") }),
  clause("depth", { kind: "within", low: exact("30 mm"), high: exact("40 mm") }),
  clause("pad", { kind: "below", limit: exact("20 mm") }),
  clause("seams", null),
];
const yes: SystemFigure = { kind: "answer", meets: true };
const systems = [
  system("A", { pile: at(55), depth: at(35), pad: at(10), seams: yes }),
  system("B", { pile: at(45), depth: at(35), pad: at(12), seams: yes }),
  system("C", { pile: at(52), depth: at(25), pad: at(20), seams: yes }),
  system("D", { pile: at(48, 52), depth: at(35), pad: at(15) }),
  system("E", { pile: at(40), depth: at(45), pad: at(25), seams: { kind: "answer", meets: false } }),
];

describe("the competition check", () => {
  const found = competition(clauses, systems);

  test("says of each clause and system whether it meets, fails or is not known, with the smallest move", () => {
    expect(found.matrix.map((row) => row.map(({ kind }) => kind))).toEqual([
      ["meets", "fails", "meets", "not-known", "fails"],
      ["meets", "meets", "fails", "meets", "fails"],
      ["meets", "meets", "fails", "meets", "fails"],
      ["meets", "meets", "meets", "not-known", "fails"],
    ]);
    expect(found.matrix[0]?.[1]).toEqual({
      kind: "fails",
      relaxation: { clause: "pile", end: "low", from: 0.05, to: 0.045, past: false, share: expect.closeTo(0.1, 12) },
    });
    expect(found.matrix[1]?.[2]).toMatchObject({ relaxation: { end: "low", to: 0.025 } });
    expect(found.matrix[1]?.[4]).toMatchObject({ relaxation: { end: "high", to: 0.045 } });
    expect(found.matrix[2]?.[2]).toMatchObject({ relaxation: { to: 0.02, past: true } });
  });

  test("counts each clause alone and all together, with what is not known as bounds", () => {
    expect(found.together).toEqual({ fewest: 1, most: 2 });
    expect(found.couldMeetAll).toEqual(["A", "D"]);
    expect(found.clauses.map(({ meets }) => meets)).toEqual([
      { fewest: 2, most: 3 },
      { fewest: 3, most: 3 },
      { fewest: 3, most: 3 },
      { fewest: 3, most: 4 },
    ]);
    expect(found.removesMost).toEqual(["pile", "depth", "pad"]);
    expect(found.clauses[0]?.removesAlone).toEqual(["B"]);
  });

  test("finds the smallest moves that let one and two more in", () => {
    expect(found.oneMore[0]).toMatchObject({ admits: ["B"], moves: [{ clause: "pile", to: 0.045 }] });
    expect(found.oneMore[1]).toMatchObject({
      admits: ["C"],
      moves: [{ clause: "depth" }, { clause: "pad", past: true }],
    });
    expect(found.twoMore).toEqual([]); // B and C fail three limits between them, E one in words
  });

  test("says it in sentences", () =>
    expect(competitionSentences(found, { clauses, systems }, "metric")).toEqual([
      "Of 5 known systems, 1 to 2 could meet all clauses together.",
      "“pile”, “depth” and “pad” each remove the most: 2.",
      "It takes 2 clauses together to leave fewer than three: for one, “pile” and “depth”.",
      "The smallest move that lets one more system in: moving the lower limit of “pile” from 50.0 mm to 45.0 mm.",
    ]));

  test("says when one clause leaves one system, and when none is known", () => {
    const narrow = [clause("pile", { kind: "at-least", limit: exact("54 mm") })];
    expect(competitionSentences(competition(narrow, systems), { clauses: narrow, systems }, "us")).toEqual([
      "Of 5 known systems, 1 could meet all clauses together.",
      "“pile” removes the most: 4.",
      "“pile” leaves one known system. Give the reason for it in writing or widen it.",
      "“pile” alone leaves fewer than three known systems.",
      "The smallest move that lets one more system in: moving the lower limit of “pile” from 2.13 in to 2.05 in.",
      "The smallest move that lets 2 more systems in: moving the lower limit of “pile” from 2.13 in to 1.89 in.",
    ]);
    expect(competitionSentences(competition(clauses, []), { clauses, systems: [] }, "us")).toEqual([
      "No system is known yet, so nothing can be said of competition.",
    ]);
  });

  test("a system about which nothing is said may meet everything or nothing", () =>
    expect(competition(clauses, [system("X", {})]).together).toEqual({ fewest: 0, most: 1 }));

  test("refuses more clauses or systems than it can hold", () => {
    const many = Array.from({ length: 61 }, (_, index) => String(index));
    expect(() =>
      competition(
        many.map((id) => clause(id, null)),
        systems,
      ),
    ).toThrow("at most 60 clauses");
    expect(() =>
      competition(
        clauses,
        many.map((id) => system(id, {})),
      ),
    ).toThrow("at most 60 systems");
  });
});

/** Small cases: integers of millimetres, some figures unknown. */
const smallCase = fc
  .record({ rows: fc.integer({ min: 1, max: 6 }), columns: fc.integer({ min: 1, max: 9 }) })
  .chain(({ rows, columns }) =>
    fc.record({
      limits: fc.array(
        fc.record({
          kind: fc.constantFrom("at-least" as const, "at-most" as const, "within" as const),
          limit: fc.integer({ min: 2, max: 8 }),
        }),
        { minLength: rows, maxLength: rows },
      ),
      figures: fc.array(
        fc.array(fc.option(fc.integer({ min: 1, max: 9 }), { freq: 6 }), { minLength: rows, maxLength: rows }),
        {
          minLength: columns,
          maxLength: columns,
        },
      ),
      enough: fc.integer({ min: 1, max: 4 }),
    }),
  );

type Small = typeof smallCase extends fc.Arbitrary<infer T> ? T : never;

const ruleOf = ({ kind, limit }: Small["limits"][number]): GateRule =>
  kind === "within"
    ? { kind, low: exact(`${limit} mm`), high: exact(`${limit + 1} mm`) }
    : { kind, limit: exact(`${limit} mm`) };

const clausesOf = ({ limits }: Small) => limits.map((limit, index) => clause(String(index), ruleOf(limit)));
const systemsOf = ({ figures }: Small) =>
  figures.map((row, index) =>
    system(
      String(index),
      Object.fromEntries(row.flatMap((value, at_) => (value === null ? [] : [[String(at_), at(value)]]))),
    ),
  );

const passes = (kind: string, low: number, high: number, value: number) =>
  kind === "at-least" ? value >= low : kind === "at-most" ? value <= high : value >= low && value <= high;

/** How far the figure of a system lies outside, the plain way. */
const failsPlainly = ({ limits, figures }: Small, row: number, column: number): boolean => {
  const [limit, value] = [limits[row], figures[column]?.[row]];
  if (limit === undefined || value === null || value === undefined) return false;
  return !passes(limit.kind, limit.limit, limit.kind === "within" ? limit.limit + 1 : limit.limit, value);
};

const subsets = (count: number) =>
  Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (__, index) => index).filter((index) => (bits >> index) & 1),
  );

describe("against brute force on small random cases", () => {
  test("the smallest combination that leaves too few, and every minimal one up to three clauses", () => {
    fc.assert(
      fc.property(smallCase, (small) => {
        const columns = small.figures.length;
        const leaves = (members: readonly number[]) =>
          Array.from({ length: columns }, (_, column) => column).filter(
            (column) => !members.some((row) => failsPlainly(small, row, column)),
          ).length;
        const tight = subsets(small.limits.length).filter(
          (members) => members.length > 0 && leaves(members) < small.enough,
        );
        const minimal = tight.filter(
          (members) =>
            !tight.some((other) => other.length < members.length && other.every((row) => members.includes(row))),
        );
        const { lattice } = competition(clausesOf(small), systemsOf(small), small.enough);
        if (columns < small.enough || minimal.length === 0) {
          expect(lattice.kind).toBe("none");
          return;
        }
        const smallest = Math.min(...minimal.map(({ length }) => length));
        if (lattice.kind !== "found") throw new Error(`${lattice.kind}, expected found`);
        expect(lattice.smallest).toBe(smallest);
        const upTo = Math.max(3, smallest);
        expect(lattice.completeUpTo).toBe(upTo);
        const wanted = minimal
          .filter(({ length }) => length <= upTo)
          .map((members) => `${members.join()} leaves ${leaves(members)}`);
        expect(
          lattice.combinations.map(({ clauses: members, leaves: left }) => `${members.join()} leaves ${left}`).sort(),
        ).toEqual(wanted.sort());
      }),
      { numRuns: 400 },
    );
  });

  test("counts, and the smallest moves that let one and two more in", () => {
    fc.assert(
      fc.property(smallCase, (small) => {
        const found = competition(clausesOf(small), systemsOf(small), small.enough);
        const columns = small.figures.map((_, column) => column);
        const rows = small.limits.map((_, row) => row);
        const isIn = (column: number, limits: readonly (readonly [number, number])[]) =>
          rows.every((row) => {
            const [limit, value] = [small.limits[row], small.figures[column]?.[row]];
            const [low, high] = limits[row] ?? [0, 0];
            return limit === undefined || value === null || value === undefined || passes(limit.kind, low, high, value);
          });
        const asSet = small.limits.map(({ kind, limit }): readonly [number, number] => [
          limit,
          kind === "within" ? limit + 1 : limit,
        ]);
        const before = columns.filter((column) => isIn(column, asSet));
        expect(found.couldMeetAll).toEqual(before.map(String));
        expect(found.together.fewest).toBe(
          before.filter((column) => small.figures[column]?.every((value) => value !== null)).length,
        );
        // every way to widen one or two clauses to whole millimetres, with its cost as shares of the limits moved
        const ways = rows.flatMap((row) => {
          const [low, high] = asSet[row] ?? [0, 0];
          const kind = small.limits[row]?.kind;
          const lows = kind === "at-most" ? [low] : Array.from({ length: low }, (_, index) => index + 1);
          const highs = kind === "at-least" ? [high] : Array.from({ length: 10 - high }, (_, index) => high + index);
          return lows.flatMap((newLow) =>
            highs.map((newHigh) => ({
              row,
              limits: [newLow, newHigh] as const,
              cost: (low - newLow) / low + (newHigh - high) / high,
            })),
          );
        });
        const cheapest = (more: number) => {
          let best = Number.POSITIVE_INFINITY;
          for (const one of ways)
            for (const other of ways) {
              if (other.row < one.row || (other.row === one.row && other !== one)) continue;
              const cost = one === other ? one.cost : one.cost + other.cost;
              if (cost >= best) continue;
              const limits = asSet.map((limit, row) =>
                row === other.row ? other.limits : row === one.row ? one.limits : limit,
              );
              if (columns.filter((column) => isIn(column, limits)).length >= before.length + more) best = cost;
            }
          return best;
        };
        for (const [more, list] of [
          [1, found.oneMore],
          [2, found.twoMore],
        ] as const) {
          const best = cheapest(more);
          const got = list.length === 0 ? Number.POSITIVE_INFINITY : (list[0]?.share ?? Number.NaN);
          if (Number.isFinite(best)) expect(got).toBeCloseTo(best, 9);
          else expect(got).toBe(best);
          for (const { admits } of list) expect(admits.length).toBeGreaterThanOrEqual(more);
        }
      }),
      { numRuns: 60 },
    );
  });
});
