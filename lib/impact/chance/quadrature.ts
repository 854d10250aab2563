/** Places with weights: the sum of weight × value stands for an integral or a mean. */
export type Node = Readonly<{ at: number; weight: number }>;

/** Enough for the smooth pieces that chances are cut into; test/checks/outlook.test.ts holds it against adaptive quadrature. */
const order = 8;

/**
 * The rule of Gauss and Legendre with `count` nodes on −1 to 1, exact for polynomials up to degree 2 × count − 1.
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.29; nodes by Newton's method
 */
function gaussLegendre(count: number): readonly Node[] {
  return Array.from({ length: count }, (_, index): Node => {
    let at = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 0;
    for (let round = 0; round < 12; round += 1) {
      const { value, derivative } = legendre(count, at);
      slope = derivative;
      at -= value / derivative;
    }
    return { at, weight: 2 / ((1 - at * at) * slope * slope) };
  });
}

/** Legendre's polynomial of a degree with its derivative, by the recurrence. */
function legendre(degree: number, at: number): Readonly<{ value: number; derivative: number }> {
  let [before, value] = [1, at];
  for (let n = 2; n <= degree; n += 1) [before, value] = [value, ((2 * n - 1) * at * value - (n - 1) * before) / n];
  return { value, derivative: (degree * (at * value - before)) / (at * at - 1) };
}

export type Rule = readonly Node[];
const rule: Rule = gaussLegendre(order);
/** For what is averaged a second time, so that it is smooth already. */
export const coarseRule: Rule = gaussLegendre(4);

/** Takes one place with its weight; called back instead of listing places, because a year asks for some hundred. */
export type Visit = (at: number, weight: number) => void;

/**
 * Visits the nodes of an integral from one end to the other, in pieces that end at the cuts.
 * @param cuts in any order; those outside the ends count for nothing
 */
export function visitNodes(low: number, high: number, cuts: readonly number[], visit: Visit, nodes: Rule = rule): void {
  const inside = cuts.filter((cut) => cut > low && cut < high).sort((one, other) => one - other);
  let start = low;
  for (const end of [...inside, high]) {
    const half = (end - start) / 2;
    for (const { at, weight } of nodes) visit(start + half * (1 + at), weight * half);
    start = end;
  }
}
