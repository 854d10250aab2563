import { evidenceLevels, type MethodId, ofAge } from "#lib/claim";
import type { Criterion } from "#lib/criteria";
import type { Clause, ClauseTerms, Requirement, RequirementSubject, Role } from "./model";
import { toleranceOf } from "./tolerance";

/** Methods by id of measure. */
type MeasureMethods = Readonly<Record<string, MethodId>>;

/** The terms of a criterion beside which nobody has written a clause: on, and nothing filled in. */
const unwritten = (id: string): ClauseTerms => ({
  id,
  isOn: true,
  method: null,
  edition: { text: "", year: null },
  condition: ofAge({ kind: "not-stated" }),
  holdsAt: "not-stated",
  tolerance: "",
  submittals: [],
  acceptance: "",
  yearsBetweenTests: null,
  remedy: "",
  limitSource: "",
});

function roleOf({ gate, valueFunction }: Criterion): Role {
  if (gate.kind === "none") return valueFunction.kind === "none" ? "none" : "scores";
  return valueFunction.kind === "none" ? "gates" : "gates and scores";
}

const termsOf = (clause: Clause): ClauseTerms => {
  const { id, isOn, method, edition, condition, holdsAt, tolerance } = clause;
  const { submittals, acceptance, yearsBetweenTests, remedy, limitSource } = clause;
  return {
    id,
    isOn,
    method,
    edition,
    condition,
    holdsAt,
    tolerance,
    submittals,
    acceptance,
    yearsBetweenTests,
    remedy,
    limitSource,
  };
};

function ofCriterion(criterion: Criterion, clause: Clause | undefined, methods: MeasureMethods): Requirement {
  const terms = clause === undefined ? unwritten(criterion.id) : termsOf(clause);
  const subject: RequirementSubject = criterion.measure;
  return {
    ...terms,
    method: subject.method ?? terms.method ?? methods[subject.id] ?? null, // the measure is by that method; a second one would be another measure
    label: criterion.label,
    reason: criterion.reason,
    subject,
    tolerance: toleranceOf(subject.dimension, terms.tolerance),
    limit: criterion.gate.kind === "none" ? null : criterion.gate,
    asked: "",
    place: "performance",
    evidence: criterion.evidence.least.label,
    criterion,
    role: roleOf(criterion),
  };
}

function ofOwnClause(clause: Extract<Clause, { kind: "own" }>): Requirement {
  const { label, reason, subject, limit, asked, place } = clause;
  const evidence = evidenceLevels.find(({ id }) => id === clause.evidence)?.label ?? "";
  const terms = termsOf(clause);
  const tolerance = subject === null ? null : toleranceOf(subject.dimension, terms.tolerance);
  return {
    ...terms,
    tolerance,
    method: subject?.method ?? terms.method,
    label,
    reason,
    subject,
    limit,
    asked,
    place,
    evidence,
    criterion: null,
    role: "none",
  };
}

/**
 * The requirements of a project: every criterion in its order with the clause beside it, then the clauses that no
 * criterion uses. A criterion without a clause is a requirement all the same, with its blanks.
 * @param methods of measures that have none of their own, such as the impact level by the method of the impact requirement
 * @throws RangeError if a clause names a criterion that is not there: the schema let it through
 */
export function requirementsOf(
  criteria: readonly Criterion[],
  clauses: readonly Clause[],
  methods: MeasureMethods = {},
): readonly Requirement[] {
  const beside = new Map(
    clauses.flatMap((clause) => (clause.kind === "of-criterion" ? [[clause.criterion, clause] as const] : [])),
  );
  const stray = [...beside.keys()].find((id) => criteria.every((criterion) => criterion.id !== id));
  if (stray !== undefined) throw new RangeError(`no criterion ${stray}`);
  return [
    ...criteria.map((criterion) => ofCriterion(criterion, beside.get(criterion.id), methods)),
    ...clauses.flatMap((clause) => (clause.kind === "own" ? [ofOwnClause(clause)] : [])),
  ];
}
