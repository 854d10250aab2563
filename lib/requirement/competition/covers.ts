import { countBits, type SystemSet } from "./system-set";

/** Whether the search went through to its end, and the combinations it met. */
export type Covers = Readonly<{ found: readonly (readonly number[])[]; isComplete: boolean }>;

/** Places at which the search looks before it gives up and says so. */
const mostPlaces = 1_500_000;

/**
 * Every combination of exactly or up to `size` sets whose union leaves at most `spare` systems outside, each met once.
 * At each place the system that the fewest sets can still cover is taken up: either one of those sets is in, the ones
 * tried before being out, or the system is one of the spare ones. A branch ends where the largest sets still allowed
 * could not cover enough.
 * @param mostFound ends the search once so many were met
 */
export function coversOfSize(
  sets: readonly SystemSet[],
  systems: number,
  spare: number,
  size: number,
  mostFound: number,
): Covers {
  const first = Int32Array.from(sets, (set) => set.first);
  const second = Int32Array.from(sets, (set) => set.second);
  const isOut = new Uint8Array(sets.length);
  const chosen: number[] = [];
  const found: (readonly number[])[] = [];
  let places = 0;

  const covered = (set: number, openFirst: number, openSecond: number) =>
    countBits((first[set] ?? 0) & openFirst) + countBits((second[set] ?? 0) & openSecond);

  /** The most systems that `picks` of the sets still allowed could cover, as if they never met. */
  function reachOf(openFirst: number, openSecond: number, picks: number): number {
    const best = new Array<number>(picks).fill(0);
    for (let set = 0; set < sets.length; set++) {
      if (isOut[set] === 1) continue;
      const count = covered(set, openFirst, openSecond);
      for (let at = 0; at < picks; at++) {
        if (count <= (best[at] ?? 0)) continue;
        best.splice(at, 0, count);
        best.pop();
        break;
      }
    }
    return best.reduce((sum, count) => sum + count, 0);
  }

  /** The open system that the fewest allowed sets cover. */
  function scarcest(openFirst: number, openSecond: number): number {
    let [scarce, fewest] = [-1, Number.POSITIVE_INFINITY];
    for (let system = 0; system < systems; system++) {
      const isOpen = system < 30 ? (openFirst >>> system) & 1 : (openSecond >>> (system - 30)) & 1;
      if (isOpen === 0) continue;
      let count = 0;
      for (let set = 0; set < sets.length; set++) if (isOut[set] === 0 && holds(set, system)) count++;
      if (count < fewest) [scarce, fewest] = [system, count];
    }
    return scarce;
  }

  const holds = (set: number, system: number): boolean =>
    ((system < 30 ? (first[set] ?? 0) >>> system : (second[set] ?? 0) >>> (system - 30)) & 1) === 1;

  /** Returns false once the search has to stop. */
  function look(openFirst: number, openSecond: number, spareLeft: number): boolean {
    if (++places > mostPlaces || found.length >= mostFound) return false;
    const open = countBits(openFirst) + countBits(openSecond);
    if (open <= spareLeft) {
      found.push([...chosen].sort((one, other) => one - other));
      return true;
    }
    const picks = size - chosen.length;
    if (picks === 0 || reachOf(openFirst, openSecond, picks) < open - spareLeft) return true;
    const system = scarcest(openFirst, openSecond);
    const covering = sets.flatMap((_, set) => (isOut[set] === 0 && holds(set, system) ? [set] : []));
    covering.sort((one, other) => covered(other, openFirst, openSecond) - covered(one, openFirst, openSecond));
    const put: number[] = [];
    let goesOn = true;
    for (const set of covering) {
      isOut[set] = 1;
      put.push(set);
      chosen.push(set);
      goesOn = look(openFirst & ~(first[set] ?? 0), openSecond & ~(second[set] ?? 0), spareLeft);
      chosen.pop();
      if (!goesOn) break;
    }
    if (goesOn && spareLeft > 0) {
      goesOn =
        system < 30
          ? look(openFirst & ~(1 << system), openSecond, spareLeft - 1)
          : look(openFirst, openSecond & ~(1 << (system - 30)), spareLeft - 1);
    }
    for (const set of put) isOut[set] = 0;
    return goesOn;
  }

  const all = (count: number) => (count <= 0 ? 0 : 2 ** Math.min(30, count) - 1);
  const isComplete = look(all(systems), all(systems - 30), spare);
  return { found, isComplete };
}
