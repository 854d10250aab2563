import { type In, measured } from "#lib/quantity";

/** The artificial athlete: mass, fall and spring. @source from memory: FIFA handbook of test methods, method 04a */
const athlete = { mass: 20, fall: 0.055, spring: 2_000_000 }; // kg, m, N/m

/** Conventional standard gravity, m/s². @source NIST SP 811 (2008), exact by convention */
const weight = athlete.mass * 9.80665; // N

/**
 * Peak force on a floor that does not give, in N: ½·k·x² = m·g·(fall + x), solved for k·x.
 * @source derived from conservation of energy
 */
const forceOnConcrete = weight + Math.sqrt(weight ** 2 + 2 * athlete.spring * weight * athlete.fall);

/**
 * The least that a surface sinks under the artificial athlete at a stated shock absorption, whatever it is made of.
 * The fall brings in m·g·(fall + x + d); the spring keeps at most F²/2k; the surface takes at most F·d, as the force is
 * nowhere above its peak F. So d ≥ (m·g·(fall + F/k) − F²/2k) ÷ (F − m·g).
 * @param shockAbsorption below 1; open where the surface would carry no more than the weight
 * @source derived from conservation of energy
 */
export function leastDeformation(shockAbsorption: In<"1">): In<"m"> {
  const force = forceOnConcrete * (1 - shockAbsorption);
  if (force <= weight) return measured("length", Number.POSITIVE_INFINITY);
  const broughtIn = weight * (athlete.fall + force / athlete.spring);
  const kept = force ** 2 / (2 * athlete.spring);
  return measured("length", Math.max(0, (broughtIn - kept) / (force - weight)));
}
