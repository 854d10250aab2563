import { z } from "zod";
import {
  type Condition,
  evidenceLevels,
  explainCondition,
  type MethodId,
  matchEvidence,
  matchMethod,
  parseCondition,
  readEdition,
} from "#lib/claim";
import { type Criterion, type GateRule, gateIn, gateOrderProblem, gateSchema } from "#lib/criteria";
import { keptText } from "#lib/entry";
import { listed } from "#lib/figure";
import { explainQuantity, inUnit, parseExact } from "#lib/quantity";
import {
  type AskedSubmittal,
  type Clause,
  type ClausePlace,
  type ClauseTerms,
  clausePlaces,
  type RequirementSubject,
  type SubmittalKind,
  submittalKinds,
} from "./model";
import { parseTolerance } from "./tolerance";

type Report = Pick<z.RefinementCtx, "addIssue">;

const kept = (what: string, most = 1000) => keptText(what, most);

const idField = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "Expected an id of small letters, digits and single hyphens, such as tuft-bind.");

const kinds = Object.keys(submittalKinds) as [SubmittalKind, ...SubmittalKind[]];
const submittalKind = z.enum(kinds, { error: `Expected a kind of submittal: ${listed(kinds, "or")}.` });

/** A clause as forms and files hold it. Only the id is needed; what is left out is a blank of the text. */
const clauseText = z.strictObject({
  id: idField,
  /** Id of the criterion that it stands beside; empty for a clause of its own. */
  criterion: z.string().default(""),
  label: kept("a name", 200),
  reason: kept("a reason"),
  /** Id of the measure that an own clause limits; empty where it asks in words. */
  measure: z.string().default(""),
  limit: gateSchema(() => z.string()).prefault({ kind: "none" }),
  asked: kept("what is asked"),
  /** Article in which a clause in words stands. Absent in what was stored before it could be chosen. */
  place: z.enum(Object.keys(clausePlaces) as [ClausePlace, ...ClausePlace[]]).default("performance"),
  evidence: z.string().default("stated"),
  isOn: z.boolean().default(true),
  method: z.string().default(""),
  edition: kept("an edition", 100),
  condition: z.string().default(""),
  holdsAt: z.enum(["each-point", "average", "whole", "not-stated"]).default("not-stated"),
  tolerance: kept("a tolerance", 100),
  submittals: z.array(submittalKind).max(8).default([]),
  acceptance: kept("the test on the finished work"),
  /** Time between later tests, such as “1 year”; empty where none is asked for. */
  laterTests: kept("the time between later tests", 100),
  remedy: kept("a remedy"),
  limitSource: kept("the source of the limit", 300),
});

type ClauseText = z.output<typeof clauseText>;

const report = (context: Report, field: string, message: string) =>
  context.addIssue({ code: "custom", path: [field], message });

function methodOfText(context: Report, text: string): MethodId | null {
  const method = matchMethod(text);
  if (method === null)
    report(context, "method", `“${text}” is not a test method in the register. Expected one such as “ASTM F1936”.`);
  return method === null || method === "not-stated" ? null : method;
}

function conditionOfText(context: Report, text: string): Condition | undefined {
  const parsed = parseCondition(text);
  if (parsed.ok) return parsed.value;
  report(context, "condition", explainCondition(parsed.problem));
  return undefined;
}

/** Says what keeps a tolerance from being read in the dimension of what it belongs to. */
function reportTolerance(tell: (message: string) => void, subject: RequirementSubject | null, text: string): void {
  if (text === "") return;
  if (subject === null) {
    tell("A tolerance belongs to a figure, and this clause asks in words. Name the measure or empty the field.");
    return;
  }
  const read = parseTolerance(subject.dimension, text);
  if (!read.ok) tell(explainQuantity(read.problem));
}

/** “1 year” → 1; null where nothing is written, undefined once a problem has been reported. */
function yearsOfText(context: Report, text: string): number | null | undefined {
  if (text === "") return null;
  const read = parseExact("time", text);
  if (read.ok) return inUnit("time", read.value.value, "year");
  report(context, "laterTests", explainQuantity(read.problem));
  return undefined;
}

/** What belongs to the criterion alone, so that nothing is typed twice. */
const criterionsOwn = ["label", "reason", "measure", "asked"] as const;

function reportTypedTwice(context: Report, text: ClauseText): void {
  for (const field of criterionsOwn)
    if (text[field] !== "")
      report(
        context,
        field,
        "The criterion says this already, and a second text could differ from it. Leave the field empty.",
      );
  if (text.limit.kind !== "none") report(context, "limit", "The criterion holds the limit. Change it there.");
}

function readLimit(context: Report, text: ClauseText, subject: RequirementSubject | null): GateRule | null | undefined {
  if (text.limit.kind === "none") return null;
  if (subject === null) {
    report(context, "limit", "A limit needs a measure. Name the measure, or ask in words.");
    return undefined;
  }
  const read = gateIn(subject.dimension).safeParse(text.limit);
  if (read.success) {
    if (read.data.kind === "none") return null;
    const problem = gateOrderProblem(read.data);
    if (problem === null) return read.data;
    context.addIssue({ code: "custom", path: ["limit", problem.field], message: problem.message });
    return undefined;
  }
  for (const { path, message } of read.error.issues)
    context.addIssue({ code: "custom", path: ["limit", ...path], message });
  return undefined;
}

/** The terms every clause has; undefined once a problem has been reported. */
function termsOf(context: Report, text: ClauseText): ClauseTerms | undefined {
  const condition = conditionOfText(context, text.condition);
  const method = methodOfText(context, text.method);
  const yearsBetweenTests = yearsOfText(context, text.laterTests);
  if (condition === undefined || yearsBetweenTests === undefined) return undefined;
  const { id, isOn, holdsAt, tolerance, submittals, acceptance, remedy, limitSource } = text;
  const edition = readEdition(text.edition);
  return {
    id,
    isOn,
    holdsAt,
    tolerance,
    submittals,
    acceptance,
    remedy,
    limitSource,
    condition,
    method,
    edition,
    yearsBetweenTests,
  };
}

function ownClause(context: Report, text: ClauseText, subjects: readonly RequirementSubject[]): Clause | undefined {
  const subject = text.measure === "" ? null : subjects.find(({ id }) => id === text.measure);
  if (subject === undefined)
    report(
      context,
      "measure",
      `The measure reads “${text.measure}”. Expected one of the list of measures, or nothing.`,
    );
  if (text.label === "") report(context, "label", "Name the clause in a few plain words.");
  if (text.reason === "")
    report(context, "reason", "Say in a sentence why this is asked, so that a bidder and the public can follow it.");
  if (subject === null && text.asked === "")
    report(context, "asked", "Say what is asked, or name a measure with a limit.");
  const evidence = matchEvidence(text.evidence);
  if (evidence === null)
    report(
      context,
      "evidence",
      `The evidence asked for reads “${text.evidence}”. Expected ${listed(
        evidenceLevels.map(({ id }) => id),
        "or",
      )}.`,
    );
  const limit = subject === undefined ? undefined : readLimit(context, text, subject);
  reportTolerance((message) => report(context, "tolerance", message), subject ?? null, text.tolerance);
  const terms = termsOf(context, text);
  if (subject === undefined || evidence === null || limit === undefined || terms === undefined) return undefined;
  const { label, reason, asked, place } = text;
  return { ...terms, kind: "own", label, reason, evidence, subject, limit, asked, place };
}

/** How many clauses a project may hold beside its criteria and of its own. */
const mostClauses = 120;

/**
 * The clauses of a project, as a fragment for the requirements document: `clauses: clausesSchema(measures).default([])`,
 * so that documents from before there were clauses still read.
 */
export const clausesSchema = (subjects: readonly RequirementSubject[]) =>
  z
    .array(
      clauseText.transform((text, context): Clause => {
        if (text.criterion === "") return ownClause(context, text, subjects) ?? z.NEVER;
        reportTypedTwice(context, text);
        const terms = termsOf(context, text);
        return terms === undefined ? z.NEVER : { ...terms, kind: "of-criterion", criterion: text.criterion };
      }),
    )
    .max(mostClauses, `Expected at most ${mostClauses} clauses.`)
    .superRefine((clauses, context) => {
      for (const [index, { id }] of clauses.entries())
        if (clauses.findIndex((other) => other.id === id) !== index)
          context.addIssue({
            code: "custom",
            path: [index, "id"],
            message: `Another clause has the id “${id}” as well.`,
          });
    });

/** Submittals that the owner asks for beyond what clauses ask: `submittals: askedSubmittalsSchema.default([])`. */
export const askedSubmittalsSchema = z
  .array(
    z.strictObject({
      id: idField,
      item: z.string().trim().min(1, "Name what is to be handed in.").max(300),
      kind: submittalKind,
      usedBy: z.array(z.string()).max(60).default([]),
    }),
  )
  .max(60, "Expected at most 60 submittals.") satisfies z.ZodType<readonly AskedSubmittal[], unknown>;

/**
 * Reports clauses beside criteria that are not there, and criteria with two clauses. For the object that holds both:
 * `.superRefine(reportStrayClauses)`.
 */
export function reportStrayClauses(
  { criteria, clauses }: Readonly<{ criteria: readonly Criterion[]; clauses: readonly Clause[] }>,
  context: Report,
): void {
  for (const [index, clause] of clauses.entries()) {
    if (clause.kind === "own") continue;
    const at = (message: string, field = "criterion") =>
      context.addIssue({ code: "custom", path: ["clauses", index, field], message });
    const criterion = criteria.find(({ id }) => id === clause.criterion);
    if (criterion !== undefined)
      reportTolerance((message) => at(message, "tolerance"), criterion.measure, clause.tolerance);
    else at(`There is no criterion “${clause.criterion}”. Take the clause out, or name the criterion it belongs to.`);
    const first = clauses.findIndex((other) => other.kind === "of-criterion" && other.criterion === clause.criterion);
    if (first !== index) at(`Another clause stands beside the criterion “${clause.criterion}” already.`);
  }
}

/** The clauses as forms and files hold them. */
export type ClausesText = z.input<ReturnType<typeof clausesSchema>>;
