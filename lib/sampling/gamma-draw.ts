import type { Generator } from "./generator";
import { portableExp, portableLog } from "./portable";

/** Fills an array with gamma values, one for each shape. */
export type GammaDraws = (generator: Generator, into: Float64Array) => void;

const stripBits = 7;
/** Strips of one table. More would miss less often, but 40 tables would no longer stay near the processor. */
const strips = 1 << stripBits;
const perWord = 2 ** -32;
const perChance = 2 ** (stripBits - 32);

/**
 * The density that is drawn from, up to a factor. A gamma value of shape a is the m-th power of a value with the density
 * y^(m·a − 1)·exp(−y^m). With m·a at 1 or more that has one peak and no pole, and falls off faster than any straight line
 * of its logarithm, so that one table serves every shape.
 */
type Peaked = Readonly<{
  squarings: number;
  peak: number;
  heightAt: (y: number) => number;
  fallAt: (y: number) => number;
}>;

function squared(y: number, squarings: number): number {
  let power = y;
  for (let turn = 0; turn < squarings; turn += 1) power *= power;
  return power;
}

function peakedFor(shape: number): Peaked {
  let squarings = 0;
  let m = 1;
  while (m * shape < 1) {
    squarings += 1;
    m *= 2;
  }
  const steep = m * shape - 1;
  const peak = steep > 0 ? portableExp(portableLog(steep / m) / m) : 0;
  const logAt = (y: number) => (steep > 0 ? steep * portableLog(y) : 0) - squared(y, squarings);
  const top = logAt(peak);
  return {
    squarings,
    peak,
    heightAt: (y) => (y > 0 ? portableExp(logAt(y) - top) : y === 0 && steep === 0 ? 1 : 0),
    fallAt: (y) => (m * squared(y, squarings) - steep) / y,
  };
}

/** What a strip is kept as: where it begins, how wide it is, up to which chance it is sure, and how high it is. */
const [fromAt, widthAt, sureAt, topAt, perStrip] = [0, 1, 2, 3, 4];

/** Strips of one area each, upright beside each other; in each the density lies between its two ends. */
type Table = Readonly<{
  /** `sure` is the least density in a strip over its greatest: below that chance nothing has to be worked out. */
  numbers: Float64Array;
  /** The strip that stands for everything right of `tailFrom`; the ones after it are empty. */
  tail: number;
  tailFrom: number;
  /** Slope of the logarithm where the tail begins, and the part of a strip that the tail takes up at most. */
  fall: number;
  tailPart: number;
}>;

/** Lays strips of one area from the peak outwards; null where they are more than the table holds. */
function laid({ peak, heightAt, fallAt }: Peaked, area: number): Table | null {
  const numbers = new Float64Array(strips * perStrip);
  let count = 0;
  const put = (from: number, width: number, least: number, most: number) => {
    numbers.set([from, width, least / most, most], count * perStrip);
    count += 1;
  };
  for (let right = peak; right > 0; ) {
    if (count >= strips - 1) return null;
    const most = heightAt(right);
    const left = right - area / most; // the last one reaches beyond 0, where the density is 0
    put(left, right - left, heightAt(left), most);
    right = left;
  }
  for (let left = peak; ; ) {
    const most = heightAt(left);
    const fall = left > peak ? fallAt(left) : 0;
    if (fall > 0 && most <= fall * area)
      return { numbers, tail: count, tailFrom: left, fall, tailPart: most / (fall * area) };
    if (count >= strips - 1) return null;
    const right = left + area / most;
    put(left, right - left, heightAt(right), most);
    left = right;
  }
}

/** The finest strips that a table holds, within 2 parts in 100. */
function finest(peaked: Peaked): Table {
  let area = 1;
  while (laid(peaked, area) === null) area *= 2;
  for (let finer = laid(peaked, area / 1.02); finer !== null; finer = laid(peaked, area / 1.02)) area /= 1.02;
  const table = laid(peaked, area);
  if (table === null) throw new RangeError("strips that fitted no longer fit");
  return table;
}

/** The values that two words of bits are not enough for: decided by the density itself, or drawn anew. */
function carefully({ heightAt }: Peaked, { numbers, tail, tailFrom, fall, tailPart }: Table) {
  /** A value beyond the strips; below 0 where it was thrown away. */
  const fromTail = (chance: number, generator: Generator): number => {
    if (chance >= tailPart) return -1;
    const beyond = -portableLog(generator.nextShare()) / fall;
    const y = tailFrom + beyond;
    const hat = heightAt(tailFrom) * portableExp(-fall * beyond);
    return generator.nextShare() * hat <= heightAt(y) ? y : -1;
  };
  return (first: number, second: number, generator: Generator): number => {
    let [pick, place] = [first, second];
    for (;;) {
      const strip = pick & (strips - 1);
      const chance = ((pick >>> stripBits) + 0.5) * perChance;
      const at = strip * perStrip;
      let y = -1;
      if (strip < tail) {
        y = (numbers[at + fromAt] as number) + (numbers[at + widthAt] as number) * ((place + 0.5) * perWord);
        const isSure = chance < (numbers[at + sureAt] as number);
        if (!isSure && chance * (numbers[at + topAt] as number) > heightAt(y)) y = -1;
      } else if (strip === tail) y = fromTail(chance, generator);
      if (y > 0) return y;
      pick = generator.nextBits();
      place = generator.nextBits();
    }
  };
}

/**
 * Prepares draws from gamma distributions of scale 1: a strip is picked, a place in it, and kept or thrown away so that
 * the density comes out exactly. Two words of bits are enough about 19 times in 20. Basic arithmetic and our own
 * logarithm only, so that a seed gives the same bytes on every machine.
 * @param shapes each above 0
 * @source rejection from strips of one area, after Ahrens, Computing 55, 1995, from memory; the tail lies below the tangent
 * of a concave logarithm, as in Devroye, Non-Uniform Random Variate Generation, 1986, chapter VII, from memory
 */
export function gammaDraws(shapes: readonly number[]): GammaDraws {
  const prepared = shapes.map((shape) => {
    const peaked = peakedFor(shape);
    const table = finest(peaked);
    return { table, squarings: peaked.squarings, draw: carefully(peaked, table) };
  });
  // all tables in one array: a million sets of weights read it 40 times each
  const size = strips * perStrip;
  const numbers = new Float64Array(size * shapes.length);
  for (const [order, { table }] of prepared.entries()) numbers.set(table.numbers, order * size);
  const squarings = Int32Array.from(prepared, (one) => one.squarings);
  const draws = prepared.map(({ draw }) => draw);
  const bits = new Uint32Array(2 * shapes.length);
  return (generator, into) => {
    generator.fillBits(bits);
    for (let order = 0; order < draws.length; order += 1) {
      const pick = bits[2 * order] as number;
      const place = bits[2 * order + 1] as number;
      const at = order * size + (pick & (strips - 1)) * perStrip;
      // strips without anything in them, and the tail, are sure of nothing
      let y =
        ((pick >>> stripBits) + 0.5) * perChance < (numbers[at + sureAt] as number)
          ? (numbers[at + fromAt] as number) + (numbers[at + widthAt] as number) * ((place + 0.5) * perWord)
          : (draws[order] as (typeof draws)[number])(pick, place, generator);
      for (let turn = squarings[order] as number; turn > 0; turn -= 1) y *= y;
      into[order] = y;
    }
  };
}
