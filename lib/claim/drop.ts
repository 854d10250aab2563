import { type In, measured } from "#lib/quantity";

/** Conventional standard gravity, m/s². @source NIST SP 811 (2008), exact by convention */
const gravity = 9.80665;

/** What falls on the surface in an impact test. Mass and height are also kept as the trade writes them. */
export type Drop = Readonly<{
  mass: In<"kg">;
  massText: string;
  /** Shape of the striking face, as an adjective: "flat round". */
  face: string;
  /** Its size, as a phrase: "128 mm across". */
  across: string;
  /** Null where the method leaves the height to whoever orders or runs the test. */
  height: In<"m"> | null;
  heightText: string;
  source: string;
}>;

/**
 * Energy of a mass falling freely, before any loss: m·g·h, in J.
 * @source derived from conservation of energy
 */
export const dropEnergy = (mass: In<"kg">, height: In<"m">): In<"J"> => measured("energy", mass * gravity * height);

/**
 * Speed at impact of anything falling freely, without losses: √(2·g·h), in m/s.
 * @source derived from conservation of energy
 */
export const impactSpeed = (height: In<"m">): In<"m/s"> => measured("velocity", Math.sqrt(2 * gravity * height));
