import type { PolygonBySides } from "./model";

type Side = Readonly<{ name: string; asEntered: string; length: number }>;

/** A triangle of the fan: corner 1, two neighbouring corners, and its three sides. */
export type FanTriangle = Readonly<{ corners: string; sides: readonly [Side, Side, Side] }>;

/** What keeps sides and diagonals from forming a field. */
export type FanProblem = Readonly<
  | { kind: "too-few-sides"; count: number }
  | { kind: "diagonals-miscounted"; sides: number; expected: number; got: number }
  | { kind: "triangle-open"; corners: string; long: Side; short: readonly [Side, Side] }
>;

/**
 * Area of a triangle from its three sides, in their unit squared; NaN where they can't close.
 * The sorted form keeps its digits for needle-like triangles, where the textbook form loses them.
 * @source Heron's formula in W. Kahan's arrangement ("Miscalculating Area and Angles of a Needle-like Triangle"), from memory
 */
export function triangleArea([one, two, three]: readonly [number, number, number]): number {
  const a = Math.max(one, two, three);
  const b = Math.max(Math.min(one, two), Math.min(Math.max(one, two), three));
  const c = Math.min(one, two, three);
  return Math.sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4;
}

/** The triangles that the diagonals from corner 1 cut the field into. */
export function fanTriangles({ sides, diagonals }: Omit<PolygonBySides, "kind">): readonly FanTriangle[] {
  const named = sides.map(({ asEntered, value }, index): Side => {
    const next = index + 1 === sides.length ? 1 : index + 2;
    return { name: `side ${index + 1}–${next}`, asEntered, length: value };
  });
  const rays = [
    ...named.slice(0, 1),
    ...diagonals.map(({ asEntered, value }, index) => ({ name: `diagonal 1–${index + 3}`, asEntered, length: value })),
    ...named.slice(-1),
  ];
  return named.slice(1, -1).flatMap((outer, index) => {
    const [ray, next] = [rays[index], rays[index + 1]];
    return ray && next ? [{ corners: `1, ${index + 2} and ${index + 3}`, sides: [ray, outer, next] as const }] : [];
  });
}

const turns = ([a, b, c]: FanTriangle["sides"]) =>
  [
    [a, b, c],
    [b, a, c],
    [c, a, b],
  ] as const;

/** Converting units leaves last bits, which are no slack: 3 ft and 4 ft just reach 7 ft. */
const lastBits = 1e-13;

/** The first thing that keeps the sides and diagonals from closing; null for a sound field. */
export function fanProblem(shape: Omit<PolygonBySides, "kind">): FanProblem | null {
  const { length: count } = shape.sides;
  if (count < 3) return { kind: "too-few-sides", count };
  if (shape.diagonals.length !== count - 3)
    return { kind: "diagonals-miscounted", sides: count, expected: count - 3, got: shape.diagonals.length };
  for (const { corners, sides } of fanTriangles(shape)) {
    const open = turns(sides).find(
      ([long, one, other]) => !(one.length + other.length - long.length > lastBits * long.length),
    );
    if (open !== undefined) return { kind: "triangle-open", corners, long: open[0], short: [open[1], open[2]] };
  }
  return null;
}

const written = ({ name, asEntered }: Side) => `${name} (${asEntered})`;

const counted = (diagonals: number) => (diagonals === 1 ? "1 diagonal" : `${diagonals} diagonals`);

/** Says which sides are meant and what to measure again. */
export function explainFan(problem: FanProblem): string {
  switch (problem.kind) {
    case "too-few-sides":
      return `A field needs at least 3 sides; ${problem.count} ${problem.count === 1 ? "is" : "are"} listed.`;
    case "diagonals-miscounted":
      return `A field of ${problem.sides} sides needs ${counted(problem.expected)} from corner 1; ${problem.got} ${problem.got === 1 ? "is" : "are"} listed.`;
    case "triangle-open":
      return `The triangle of corners ${problem.corners} can't close: ${written(problem.short[0])} and ${written(problem.short[1])} together are no longer than ${written(problem.long)}. Measure these three again.`;
  }
}
