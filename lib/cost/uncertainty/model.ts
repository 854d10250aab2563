import type { Distribution } from "#lib/sampling";
import type { LineFlow } from "../cash-flows";
import type { Discounting } from "../present-value";

/**
 * How an input acts on the flows. It tells the sampler what to look for; what it finds is held against the true cost.
 * - `proportion`: every flow is a straight line in it, alone: a price, a quantity, an index, a saving.
 * - `growth`: flows carry whole powers of a yearly factor that follows from it: an escalation.
 * - `choice`: it has a few values only, and flows may depend on it in any way: a life in years.
 * - `rate`: it moves the discounting and no flow.
 */
export type InputActs = Readonly<
  { kind: "proportion" } | { kind: "growth"; factor: (value: number) => number } | { kind: "choice" } | { kind: "rate" }
>;

/**
 * Whose luck an input shares. Inputs with one driver move together, in all lines, years and bids. A share of 1 is the
 * very same draw, −1 the opposite one; between, the draw follows the driver by that much and is its own for the rest.
 * Two inputs with shares a and b of one driver are correlated by a × b on the normal scale.
 */
export type SharedDriver = Readonly<{ name: string; share: number }>;

/** One figure that costs depend on and that is not known for certain. Its unit is the one its distribution counts in. */
export type UncertainInput = Readonly<{
  id: string;
  label: string;
  distribution: Distribution;
  /** The value in the cost as entered. */
  base: number;
  acts: InputActs;
  /** null for an input that moves alone. */
  driver: SharedDriver | null;
}>;

/** The values of all inputs of a model, in their order. */
export type InputValues = ArrayLike<number>;

/** One bid as the true cost rules see it at given values of the inputs. Both functions are pure. */
export type CostOfBid = Readonly<{
  bid: string;
  flowsAt: (values: InputValues) => readonly LineFlow[];
}>;

/** All bids over the same inputs. */
export type CostModel = Readonly<{
  inputs: readonly UncertainInput[];
  bids: readonly CostOfBid[];
  discountingAt: (values: InputValues) => Discounting;
}>;
