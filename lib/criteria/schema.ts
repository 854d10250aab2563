import { z } from "zod";
import { oncePerName } from "#lib/once";
import { type DimensionName, explainQuantity, parseExact } from "#lib/quantity";
import type { FigureField, OrderProblem } from "./gate";
import { gateOrderProblem, gateSchema, limitSchema } from "./gates";
import type { AskedOf, Criterion, EvidenceLevel, EvidenceRule, Measure } from "./model";
import { ratingMeasure } from "./rating-measure";
import { shortfallRuleIds, unfitShortfallRule } from "./shortfall-rules";
import { valueFunctionSchema, valueOrderProblem } from "./value-functions";

const asTyped: FigureField<z.ZodString> = () => z.string();

/** One figure of a limit or an anchor, in the dimension of what is judged. */
const figureIn = (dimension: DimensionName) => (label: string) =>
  z.string().transform((text, context) => {
    const parsed = parseExact(dimension, text);
    if (parsed.ok) return parsed.value;
    const message = `For ${label}: ${explainQuantity(parsed.problem)}`;
    context.addIssue({ code: "custom", message });
    return z.NEVER;
  });

/** Schemas in one dimension are made once: to make one takes longer than to read with it. */
const limitIn = oncePerName((dimension: DimensionName) => limitSchema(figureIn(dimension)));
const valueFunctionIn = oncePerName((dimension: DimensionName) => valueFunctionSchema(figureIn(dimension), valueField));

/** A gate as typed, its figures read in the dimension of what is judged. */
export const gateIn = oncePerName((dimension: DimensionName) => gateSchema(figureIn(dimension)));

const textField = (message: string) => z.string().trim().min(1, message);

/** A value as the owner types it, "0.8" or "80 %" → 0 to 1. */
const valueField = z.string().transform((text, context) => {
  const [, digits, percent] = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(text) ?? [];
  const value = Number(digits) / (percent === "%" ? 100 : 1);
  if (value <= 1) return value;
  const message = `The value reads “${text}”. Expected a number from 0 to 1, or a percentage such as 80 %.`;
  context.addIssue({ code: "custom", message });
  return z.NEVER;
});

/** "30" → 30. */
const weightField = z.string().transform((text, context) => {
  const points = /^\s*\d+(\.\d+)?\s*$/.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(points)) return points;
  const message = `The weight reads “${text}”. Expected points of 0 or more, such as 30.`;
  context.addIssue({ code: "custom", message });
  return z.NEVER;
});

/** "25 %" or "0.25" → 0.25: the part of its points that a less proven figure loses. */
function readDiscount(text: string): number | null {
  const [, digits, percent] = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(text) ?? [];
  const discount = Number(digits) / (percent === "%" ? 100 : 1);
  return discount > 0 && discount < 1 ? discount : null;
}

/** Absent in what was stored before a criterion could be asked of some bids only. */
const askedOfText = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("every-bid") }),
    z.strictObject({ kind: z.literal("bids-where"), measure: z.string(), is: limitSchema(asTyped) }),
  ])
  .default({ kind: "every-bid" });

const evidenceText = z.strictObject({
  least: z.string(),
  shortfall: z.enum(shortfallRuleIds),
  /** Read under the rule that takes something off; absent in what was stored before. */
  discount: z.string().default(""),
});

/** What forms and files hold, before limits and anchors are read in the measure's dimension. */
const criterionText = z.strictObject({
  id: z
    .string()
    .regex(
      /^[a-z0-9]+(-[a-z0-9]+)*$/,
      "Expected an id of small letters, digits and single hyphens, such as fall-height.",
    ),
  measure: z.string(),
  label: textField("Name the criterion in a few plain words."),
  reason: textField("Say in a sentence why this is asked, so that a bidder and the public can follow it."),
  /** Absent in what was stored before criteria kept their source. */
  source: z.string().trim().max(1000, "Expected at most 1,000 characters.").default(""),
  askedOf: askedOfText,
  /** Absent in what was stored before criteria could be weighed under headings. */
  heading: z.string().default(""),
  gate: gateSchema(asTyped),
  valueFunction: valueFunctionSchema(asTyped, z.string()),
  weight: weightField,
  evidence: evidenceText,
});

type Typed = z.output<typeof criterionText>;

type Report = Pick<z.RefinementCtx, "addIssue">;

const report = (context: Report, path: readonly PropertyKey[], message: string) =>
  context.addIssue({ code: "custom", path: [...path], message });

const someOf = (ids: readonly string[]) =>
  ids
    .slice(0, 3)
    .map((id) => `“${id}”`)
    .join(", ");

/** The rule read in the measure's dimension; undefined once what stands in the way has been reported under `at`. */
function readRule<Rule>(
  context: Report,
  at: readonly PropertyKey[],
  read: z.ZodSafeParseResult<Rule>,
  orderProblem: (rule: Rule) => OrderProblem | null,
): Rule | undefined {
  if (!read.success) {
    for (const { path, message } of read.error.issues) report(context, [...at, ...path], message);
    return undefined;
  }
  const problem = orderProblem(read.data);
  if (problem === null) return read.data;
  const field = problem.field.split(".").map((key) => (/^\d+$/.test(key) ? Number(key) : key));
  report(context, [...at, ...field], problem.message);
  return undefined;
}

/** The measure that a text names; undefined once what was expected has been reported under `at`. */
function readMeasure(
  context: Report,
  at: readonly PropertyKey[],
  text: string,
  measures: readonly Measure[],
): Measure | undefined {
  const measure = measures.find(({ id }) => id === text);
  const known = someOf(measures.map(({ id }) => id));
  if (measure === undefined)
    report(context, at, `The measure reads “${text}”. Expected one that can be judged, such as ${known}.`);
  return measure;
}

function readAskedOf(context: Report, askedOf: Typed["askedOf"], measures: readonly Measure[]): AskedOf | undefined {
  if (askedOf.kind === "every-bid") return askedOf;
  const measure = readMeasure(context, ["askedOf", "measure"], askedOf.measure, measures);
  if (measure === undefined) return undefined;
  const read = limitIn(measure.dimension).safeParse(askedOf.is);
  const is = readRule(context, ["askedOf", "is"], read, gateOrderProblem);
  return is && { kind: "bids-where", measure, is };
}

function readEvidence(
  context: Report,
  { evidence: { least: level, shortfall, discount: text }, gate, valueFunction }: Typed,
  levels: readonly EvidenceLevel[],
): EvidenceRule | undefined {
  const least = levels.find((candidate) => candidate.level === level);
  if (least === undefined) {
    const known = someOf(levels.map((candidate) => candidate.level));
    const message = `The evidence asked for reads “${level}”. Expected a level such as ${known}.`;
    report(context, ["evidence", "least"], message);
  }
  const unfit = unfitShortfallRule(shortfall, { gate, valueFunction });
  if (unfit !== null) report(context, ["evidence", "shortfall"], unfit);
  const discount = shortfall === "discount" ? readDiscount(text) : 0;
  if (discount === null) {
    const message = `The discount reads “${text}”. Expected a part of the points, more than none and less than all, such as 25 %.`;
    report(context, ["evidence", "discount"], message);
  }
  return least === undefined || unfit !== null || discount === null ? undefined : { least, shortfall, discount };
}

/** Says what keeps a criterion from deciding anything. */
function reportIdle(context: Report, { gate, valueFunction, weight }: Typed): void {
  if (valueFunction.kind !== "none") return;
  if (gate.kind === "none") {
    report(
      context,
      ["gate"],
      "This criterion has neither a limit nor a way to score, so it decides nothing. Add one of them.",
    );
  }
  if (weight > 0) {
    const message = `The weight reads “${weight}”, but nothing is scored. Expected 0, or a way to turn figures into points.`;
    report(context, ["weight"], message);
  }
}

/** What evaluators rate is scored by their rating, and nothing else is. */
function reportRating(context: Report, { measure, valueFunction }: z.output<typeof criterionText>): void {
  const isRated = measure === ratingMeasure.id;
  if (isRated === (valueFunction.kind === "rating")) return;
  const message = isRated
    ? "Evaluators rate this, so it has to be scored by their rating: give the levels with their descriptions."
    : `This is a figure of the bid, so evaluators do not rate it. For their rating, choose the measure “${ratingMeasure.label}”.`;
  report(context, ["valueFunction", "kind"], message);
}

/**
 * A criterion as typed → the model. Limits and anchors are read in the dimension of the measure they judge.
 * @param measures what can be judged
 * @param levels the levels of evidence that may be asked for
 */
function criterionSchema(measures: readonly Measure[], levels: readonly EvidenceLevel[]) {
  return criterionText.transform((text, context): Criterion => {
    reportIdle(context, text);
    reportRating(context, text);
    const evidence = readEvidence(context, text, levels);
    const askedOf = readAskedOf(context, text.askedOf, measures);
    const measure = readMeasure(context, ["measure"], text.measure, measures);
    if (measure === undefined) return z.NEVER;
    const gate = readRule(context, ["gate"], gateIn(measure.dimension).safeParse(text.gate), (rule) =>
      rule.kind === "none" ? null : gateOrderProblem(rule),
    );
    const valueFunction = readRule(
      context,
      ["valueFunction"],
      valueFunctionIn(measure.dimension).safeParse(text.valueFunction),
      (rule) => (rule.kind === "none" ? null : valueOrderProblem(rule)),
    );
    if (gate === undefined || valueFunction === undefined || evidence === undefined || askedOf === undefined)
      return z.NEVER;
    return { ...text, measure, gate, valueFunction, evidence, askedOf };
  });
}

/** A criterion as forms and files hold it. */
export type CriterionText = z.input<ReturnType<typeof criterionSchema>>;

/** The criteria of a project: each id once. */
export const criteriaSchema = (measures: readonly Measure[], levels: readonly EvidenceLevel[]) =>
  z.array(criterionSchema(measures, levels)).superRefine((criteria, context) => {
    for (const [index, { id }] of criteria.entries()) {
      if (criteria.findIndex((other) => other.id === id) === index) continue;
      report(context, [index, "id"], `Another criterion has the id “${id}” as well. Expected an id of its own.`);
    }
  });
