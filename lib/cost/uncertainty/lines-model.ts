import { onFirstReading } from "#lib/once";
import type { Distribution } from "#lib/sampling";
import { type CostSetting, cashFlows } from "../cash-flows";
import { inConstantMoney } from "../current-money";
import type { PriceLine } from "../model";
import { resolvedLines } from "../resolved-lines";
import type { CostModel, InputValues, SharedDriver } from "./model";
import { actsOf, type InputTarget, linesOf, lineWith, rateWith } from "./targets";

/** An uncertain input by what it moves in the lines of the bids. */
export type LineInput = Readonly<{
  id: string;
  label: string;
  distribution: Distribution;
  base: number;
  target: InputTarget;
  driver: SharedDriver | null;
}>;

/** The lines of one bid as they are entered. */
export type BidLines = Readonly<{ bid: string; lines: readonly PriceLine[] }>;

/**
 * The costs of bids as functions of uncertain inputs over their price lines. Lines that no input names are as entered.
 * Whoever derives lines from more than lines, as technical links do, makes a `CostModel` of their own the same way.
 */
export function linesModel(bids: readonly BidLines[], inputs: readonly LineInput[], setting: CostSetting): CostModel {
  const { conventions } = setting;
  const constant = { ...setting, conventions: inConstantMoney(conventions) };
  const entered: number = conventions.realRate.value;
  /** Where two inputs would move the rate, the one named last does. */
  const rateMovers = inputs
    .map(({ target, base }, index) => ({ target, base, index }))
    .filter(({ target }) => target.kind === "real-rate" || (target.kind === "inflation" && target.nominalRate !== null))
    .toReversed();
  const moves = (bid: string, line: string) =>
    inputs
      .flatMap(({ target, base }, index) =>
        linesOf(target).some((ref) => ref.bid === bid && ref.line === line) ? [{ target, base, index }] : [],
      )
      .toSorted((one, other) => turnOf(one.target) - turnOf(other.target));
  return {
    inputs: inputs.map(({ target, ...input }) => ({ ...input, acts: actsOf(target) })),
    bids: bids.map(({ bid, lines }) => {
      const moved = lines.map((line) => ({ line, by: moves(bid, line.id) }));
      const flowsWith = (values: InputValues) => {
        const at = moved.map(({ line, by }) =>
          by.reduce((now, { target, base, index }) => lineWith(now, target, values[index] ?? base, base), line),
        );
        // a bond or a tax follows the prices that it is a share of, a shock layer the carpets that it stays under
        return cashFlows(resolvedLines(at, setting.area), constant).flows;
      };
      // a bid that no input moves costs the same at every value
      if (moved.some(({ by }) => by.length > 0)) return { bid, flowsAt: flowsWith };
      return { bid, flowsAt: onFirstReading(() => flowsWith([])) };
    }),
    discountingAt: (values) => {
      const [last] = rateMovers;
      const rate = last === undefined ? entered : rateWith(conventions, last.target, values[last.index] ?? last.base);
      return { timing: conventions.timing, rate };
    },
  };
}

/** A figure is set before anything is added to it, and an index moves what has come of both. */
const turns = { set: 0, add: 1, "in-proportion": 2 } as const;
const turnOf = (target: InputTarget): number => (target.kind === "amount" ? turns[target.move.kind] : 0);
