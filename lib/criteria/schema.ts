import { z } from "zod";
import { type DimensionName, explainQuantity, parseExact } from "#lib/quantity";
import type { FigureField, OrderProblem } from "./gate";
import { gateOrderProblem, gateSchema } from "./gates";
import type { Criterion, EvidenceLevel, Measure } from "./model";
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
  gate: gateSchema(asTyped),
  valueFunction: valueFunctionSchema(asTyped, z.string()),
  weight: weightField,
  evidence: z.strictObject({ least: z.string(), shortfall: z.enum(["keep-open", "counts-as-worst", "ask-first"]) }),
});

type Report = Pick<z.RefinementCtx, "addIssue">;

const report = (context: Report, path: readonly PropertyKey[], message: string) =>
  context.addIssue({ code: "custom", path: [...path], message });

const someOf = (ids: readonly string[]) =>
  ids
    .slice(0, 3)
    .map((id) => `“${id}”`)
    .join(", ");

/** The rule read in the measure's dimension; undefined once what stands in the way has been reported under `field`. */
function readRule<Rule>(
  context: Report,
  field: "gate" | "valueFunction",
  read: z.ZodSafeParseResult<Rule>,
  orderProblem: (rule: Rule) => OrderProblem | null,
): Rule | undefined {
  if (!read.success) {
    for (const { path, message } of read.error.issues) report(context, [field, ...path], message);
    return undefined;
  }
  const problem = orderProblem(read.data);
  if (problem === null) return read.data;
  report(
    context,
    [field, ...problem.field.split(".").map((key) => (/^\d+$/.test(key) ? Number(key) : key))],
    problem.message,
  );
  return undefined;
}

/** Says what keeps a criterion from deciding anything. */
function reportIdle(context: Report, { gate, valueFunction, weight }: z.output<typeof criterionText>): void {
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

/**
 * A criterion as typed → the model. Limits and anchors are read in the dimension of the measure they judge.
 * @param measures what can be judged
 * @param levels the levels of evidence that may be asked for
 */
function criterionSchema(measures: readonly Measure[], levels: readonly EvidenceLevel[]) {
  return criterionText.transform((text, context): Criterion => {
    const measure = measures.find(({ id }) => id === text.measure);
    const least = levels.find(({ level }) => level === text.evidence.least);
    reportIdle(context, text);
    if (least === undefined) {
      const known = someOf(levels.map(({ level }) => level));
      report(
        context,
        ["evidence", "least"],
        `The evidence asked for reads “${text.evidence.least}”. Expected a level such as ${known}.`,
      );
    }
    if (measure === undefined) {
      const known = someOf(measures.map(({ id }) => id));
      report(
        context,
        ["measure"],
        `The measure reads “${text.measure}”. Expected one that can be judged, such as ${known}.`,
      );
      return z.NEVER;
    }
    const figure = figureIn(measure.dimension);
    const gate = readRule(context, "gate", gateSchema(figure).safeParse(text.gate), (rule) =>
      rule.kind === "none" ? null : gateOrderProblem(rule),
    );
    const valueFunction = readRule(
      context,
      "valueFunction",
      valueFunctionSchema(figure, valueField).safeParse(text.valueFunction),
      (rule) => (rule.kind === "none" ? null : valueOrderProblem(rule)),
    );
    if (gate === undefined || valueFunction === undefined || least === undefined) return z.NEVER;
    return { ...text, measure, gate, valueFunction, evidence: { ...text.evidence, least } };
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
