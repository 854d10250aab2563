import { flowPresentValue } from "../present-value";
import type { CostModel, CostOfBid, UncertainInput } from "./model";

/** The values in the cost as entered. */
export const baseValues = (inputs: readonly UncertainInput[]): Float64Array =>
  Float64Array.from(inputs, ({ base }) => base);

/** The base values with some of them replaced, by index. */
export function valuesWith(
  inputs: readonly UncertainInput[],
  changes: readonly (readonly [index: number, value: number])[],
): Float64Array {
  const values = baseValues(inputs);
  for (const [index, value] of changes) values[index] = value;
  return values;
}

/** Life-cycle cost of a bid in cents at given values of the inputs, by the rules of this room and nothing else. */
export function costAt(model: CostModel, bid: CostOfBid, values: Float64Array): number {
  const discounting = model.discountingAt(values);
  return bid.flowsAt(values).reduce((sum, { flow }) => sum + flowPresentValue(flow, discounting), 0);
}

/** @throws RangeError if there is no such bid or input: the caller mixed up its models */
export function bidOf(model: CostModel, bid: string): CostOfBid {
  const found = model.bids.find((one) => one.bid === bid);
  if (found === undefined) throw new RangeError(`no bid ${bid} in this model`);
  return found;
}

/** @throws RangeError if there is no such input: the caller mixed up its models */
export function inputIndex(model: CostModel, input: string): number {
  const index = model.inputs.findIndex(({ id }) => id === input);
  if (index < 0) throw new RangeError(`no input ${input} in this model`);
  return index;
}
