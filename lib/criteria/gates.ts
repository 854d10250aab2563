import { z } from "zod";
import { atLeast, atLeastSchema } from "./at-least";
import { atMost, atMostSchema } from "./at-most";
import { below, belowSchema } from "./below";
import type { FigureField, Gate, OneLimit, OrderProblem, Span } from "./gate";
import { type TwoLimits, within, withinSchema } from "./within";

type LimitsByKind = { "at-most": OneLimit; "at-least": OneLimit; below: OneLimit; within: TwoLimits };

/** The one list of gates: schema, scoring and forms read it. A new gate is a file, its limits above, and a line in each of the two lists below. */
export const gates: { readonly [K in keyof LimitsByKind]: Gate<LimitsByKind[K]> } = {
  "at-most": atMost,
  "at-least": atLeast,
  below,
  within,
};

/** A limit of any kind. */
export const limitSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.discriminatedUnion("kind", [
    atMostSchema(figure),
    atLeastSchema(figure),
    belowSchema(figure),
    withinSchema(figure),
  ]);

/** A limit, or none. */
export const gateSchema = <F extends z.ZodType>(figure: FigureField<F>) =>
  z.discriminatedUnion("kind", [z.strictObject({ kind: z.literal("none") }), limitSchema(figure)]);

export type GateKind = keyof LimitsByKind;
/** A gate with its limits. */
export type GateRule<K extends GateKind = GateKind> = { [P in K]: Readonly<{ kind: P }> & LimitsByKind[P] }[K];

/** What an interval of what the figure may be says about a gate: sure to pass, sure not to, or neither. */
export function gateDecision<K extends GateKind>(rule: GateRule<K>, interval: Span) {
  const gate = gates[rule.kind];
  const { worst, best } = gate.margins(interval, rule);
  const passes = (margin: number) => margin > 0 || (margin === 0 && gate.atTheLimit === "passes");
  if (passes(worst)) return { kind: "meets", margin: worst } as const;
  return passes(best) ? ({ kind: "not-decided" } as const) : ({ kind: "falls-short", margin: best } as const);
}

export const gateOrderProblem = <K extends GateKind>(rule: GateRule<K>): OrderProblem | null =>
  gates[rule.kind].orderProblem(rule);
