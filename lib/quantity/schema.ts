import { z } from "zod";
import { numberIn, siOf, type UnitOf } from "./convert";
import type { DimensionName } from "./dimensions";
import { parseExact, parseQuantity } from "./parse";
import { isPlainDate, type PlainDate } from "./plain-date";
import { expected, explainQuantity, longestQuantity } from "./problem";
import type { ExactQuantity, Quantity } from "./quantity";

/** A limit as a person would write it: `[0, "in"]`. */
export type WrittenLimit<D extends DimensionName> = readonly [number: number, unit: UnitOf<D>];

/** What an exact figure has to keep to: `above` and `below` exclude the limit itself, the others allow it. */
export type ExactLimits<D extends DimensionName> = Readonly<{
  above?: WrittenLimit<D>;
  atLeast?: WrittenLimit<D>;
  below?: WrittenLimit<D>;
  atMost?: WrittenLimit<D>;
}>;

const writtenText = (dimension: DimensionName) =>
  z
    .string({ error: `Expected ${expected(dimension)}, as text.` })
    .meta({ description: `Text with number and unit: ${expected(dimension)}. At most ${longestQuantity} characters.` });

/** Text as typed → the figure with its SI reading. Ranges, limits and tolerances are kept. */
export function quantityField<D extends DimensionName>(dimension: D): z.ZodType<Quantity<D>, string> {
  return writtenText(dimension).transform((asEntered, context) => {
    const parsed = parseQuantity(dimension, asEntered);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: explainQuantity(parsed.problem) });
    return z.NEVER;
  });
}

/** Text as typed → one number in SI, within the limits. */
export function exactField<D extends DimensionName>(
  dimension: D,
  limits: ExactLimits<D> = {},
): z.ZodType<ExactQuantity<D>, string> {
  return writtenText(dimension).transform((asEntered, context) => {
    const parsed = parseExact(dimension, asEntered);
    const message = parsed.ok ? beyond(parsed.value, limits) : explainQuantity(parsed.problem);
    if (parsed.ok && message === null) return parsed.value;
    context.addIssue({ code: "custom", message: message ?? "" });
    return z.NEVER;
  });
}

/**
 * A field that may be left empty: "" stands for a figure that nobody gave and becomes null. Anything else has to read
 * as the field does, and keeps the field's own sentence, which a plain union would lose.
 */
export const orNotGiven = <Output>(field: z.ZodType<Output, string>): z.ZodType<Output | null, string> =>
  z.union([z.literal("").transform(() => null), field], {
    error: (issue) => (issue.code === "invalid_union" ? issue.errors.at(-1)?.[0]?.message : undefined),
  });

/** The sentence about the first limit that the figure does not keep; null where it keeps all. */
function beyond<D extends DimensionName>(
  { asEntered, dimension, unit, value }: ExactQuantity<D>,
  { above, atLeast, below, atMost }: ExactLimits<D>,
): string | null {
  const si = ([number, limitUnit]: WrittenLimit<D>) => siOf(dimension, number, limitUnit);
  const say = (words: string, [number, limitUnit]: WrittenLimit<D>) =>
    `“${asEntered}” was read as ${spoken(numberIn(dimension, value, unit), unit)}. Expected ${words} ${spoken(number, limitUnit)}.`;
  if (above !== undefined && !(value > si(above))) return say("more than", above);
  if (atLeast !== undefined && !(value >= si(atLeast))) return say("at least", atLeast);
  if (below !== undefined && !(value < si(below))) return say("less than", below);
  if (atMost !== undefined && !(value <= si(atMost))) return say("at most", atMost);
  return null;
}

function spoken(number: number, unit: string): string {
  const text = new Intl.NumberFormat("en-US", { maximumSignificantDigits: 9 }).format(Math.abs(number));
  const sign = number < 0 ? "−" : "";
  return unit.startsWith("$") ? `${sign}$${text}${unit.slice(1)}` : `${sign}${text} ${unit}`.trim();
}

/** "2026-11-25" → a day of the calendar. */
export const plainDateField: z.ZodType<PlainDate, string> = z
  .string({ error: "Expected a date as text, for instance 2026-11-25." })
  .meta({ format: "date", description: "A day of the calendar, written year-month-day." })
  .transform((text, context) => {
    if (isPlainDate(text)) return text;
    context.addIssue({
      code: "custom",
      message: `“${text.slice(0, 40)}” is not a day of the calendar. Expected year-month-day, for instance 2026-11-25.`,
    });
    return z.NEVER;
  });
