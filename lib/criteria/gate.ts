import type { z } from "zod";
import type { ExactQuantity } from "#lib/quantity";

/** Makes the field of one figure in a rule. Its label is how people know the field. */
export type FigureField<F extends z.ZodType> = (label: string) => F;

/** What is amiss between figures that each read well, and at which field of the rule. */
export type OrderProblem = Readonly<{ field: string; message: string }>;

/** What a figure may be, in SI. An open side is ±Infinity. */
export type Span = Readonly<{ low: number; high: number }>;

/** Signed distances to the limit in SI at the two ends of what a figure may be: positive is inside. */
export type Margins = Readonly<{ worst: number; best: number }>;

/** One kind of limit. */
export type Gate<Limits> = Readonly<{
  label: string;
  explanation: string;
  margins: (interval: Span, limits: Limits) => Margins;
  /** Whether a figure exactly at the limit passes. */
  atTheLimit: "passes" | "falls-short";
  orderProblem: (limits: Limits) => OrderProblem | null;
}>;

/** A gate with one limit. */
export type OneLimit = Readonly<{ limit: ExactQuantity }>;
