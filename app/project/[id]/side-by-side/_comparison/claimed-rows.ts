import {
  type Claim,
  claimFieldLabels,
  claimsFor,
  comparability,
  evidenceLevels,
  formatClaimed,
  formatCondition,
  inSentence,
  isConditionStated,
  type MethodId,
  matchMethod,
  methodOf,
  type Property,
  type PropertyGroup,
  type Provenance,
  properties,
  reportInWords,
  type StatedMethod,
  shownIn,
} from "#lib/claim";
import { type Answer, earlierVersions } from "#lib/crosscheck";
import { type BidEvaluation, claimedMeasures, type Project, type Requirements } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { isOverClaimed, marksOnClaims } from "./finding-marks";
import { type Cell, emptyCell, type Fact, type Row, type Statement } from "./model";
import { type NumberAndUnit, numberAndUnit, unitInHead } from "./number-and-unit";

/** The place of a level of evidence in their order, counted from 1. */
export const levelOf = (level: Provenance["evidence"]): number =>
  evidenceLevels.findIndex(({ id }) => id === level) + 1;

/** What shows a statement and where it can be read. */
export const provenanceFacts = ({ evidence, document, page, words, date, ...report }: Provenance): readonly Fact[] =>
  [
    { label: "Evidence", text: evidenceLevels.find(({ id }) => id === evidence)?.definition ?? "" },
    { label: "Report", text: reportInWords({ ...report, date: date?.text ?? "" }).join(", ") },
    { label: "Document", text: [document, page === "" ? "" : `p. ${page}`].filter((part) => part !== "").join(", ") },
    { label: "In the bid’s words", text: words },
  ].filter(({ text }) => text !== "");

/** What a claim said before answers amended it, the earliest first. */
export const earlierFacts = (claim: string, answers: readonly Answer[]): readonly Fact[] =>
  earlierVersions(claim, answers).map(({ fields }) => ({
    label: "Before an answer",
    text: Object.entries(fields)
      .map(([field, text]) => `${labels[field] ?? field} ${text === "" ? "not given" : `“${text}”`}`)
      .join("; "),
  }));

const labels: Readonly<Record<string, string | undefined>> = claimFieldLabels;

const methodName = (method: StatedMethod): string =>
  method === "not-stated" ? "a method that is not stated" : methodOf(method).designation;

/** A method that the owner asks for by a requirement or a criterion comes first, then the one most bids used. */
function referenceMethod(property: Property, requirements: Requirements, claims: readonly Claim[]): MethodId | null {
  const asked = requirements.criteria.flatMap(({ measure }) => {
    const claimed = claimedMeasures.find(({ id }) => id === measure.id);
    return claimed?.property === property.id && claimed.method !== null ? [claimed.method] : [];
  });
  const required = property.id === "g-max" ? matchMethod(requirements.impact.method) : null;
  if (required !== null && required !== "not-stated") return required;
  return asked[0] ?? mostUsed(claims) ?? property.methods[0] ?? null;
}

/** The method by which the most claims can be compared; the first named where several have as many. */
function mostUsed(claims: readonly Claim[]): MethodId | null {
  const named = claims.flatMap(({ method }) => (method === "not-stated" ? [] : [method]));
  const followers = (method: MethodId) =>
    claims.filter((claim) => comparability(claim.property, method, claim.method).kind === "comparable").length;
  return named.reduce<MethodId | null>(
    (best, method) => (best === null || followers(method) > followers(best) ? method : best),
    null,
  );
}

type BidClaims = Readonly<{ bid: BidEvaluation; claims: readonly Claim[] }>;
type Setting = Readonly<{ property: Property; reference: MethodId | null; units: UnitSystem }>;

/** Only figures are measured: a choice or a sentence is read, whatever test stands behind it. */
const isUnlike = (claim: Claim, { reference }: Setting): boolean =>
  reference !== null &&
  claim.value.kind === "quantity" &&
  comparability(claim.property, reference, claim.method).kind === "not-comparable";

/**
 * A property across the bids: one row for the figures that compare with each other, and a row set apart for each method
 * that does not, so that unlike figures never share a line.
 */
function rowsOf(
  property: Property,
  requirements: Requirements,
  bids: readonly BidClaims[],
  units: UnitSystem,
): readonly Row[] {
  const all = bids.flatMap(({ claims }) => claims);
  const setting: Setting = { property, reference: referenceMethod(property, requirements, all), units };
  const unit = property.kind === "quantity" ? unitInHead(property.dimension, shownIn(property, units)) : "";
  const strangers = unlikeMethods(all.filter((claim) => isUnlike(claim, setting)));
  return [
    {
      id: property.id,
      label: property.label,
      unit,
      under: setting.reference === null ? "" : `Method: ${methodName(setting.reference)}, or alike.`,
      apart: false,
      cells: bids.map((bid) => mainCell(bid, setting)),
    },
    ...strangers.map(
      (method): Row => ({
        id: `${property.id}.${method}`,
        label: `${property.label}, by ${methodName(method)}`,
        unit,
        under: "Not comparable with the line above.",
        apart: true,
        cells: bids.map((bid) => apartCell(bid, method, setting)),
      }),
    ),
  ];
}

/** One method of each kind among claims that don't compare with the reference. */
function unlikeMethods(claims: readonly Claim[]): readonly StatedMethod[] {
  const methods: StatedMethod[] = [];
  for (const claim of claims) if (!methods.some((method) => sameKind(claim, method))) methods.push(claim.method);
  return methods;
}

const sameKind = ({ property, method: got }: Claim, method: StatedMethod): boolean =>
  got === method || (method !== "not-stated" && comparability(property, method, got).kind === "comparable");

function mainCell({ bid, claims }: BidClaims, setting: Setting): Cell {
  const alike = claims.filter((claim) => !isUnlike(claim, setting));
  const unlike = claims.filter((claim) => isUnlike(claim, setting));
  if (claims.length === 0) return { ...emptyCell(bid.id), status: "not shown" };
  const elsewhere =
    unlike.length === 0
      ? []
      : [`Given by ${methodName(unlike[0]?.method ?? "not-stated")}, set apart on a line of its own.`];
  if (alike.length === 0)
    return { ...emptyCell(bid.id), status: "not comparable", lines: [...elsewhere, ...reasons(unlike, setting)] };
  return { ...stated(bid, alike, setting), lines: elsewhere };
}

function apartCell({ bid, claims }: BidClaims, method: StatedMethod, setting: Setting): Cell {
  const own = claims.filter((claim) => isUnlike(claim, setting) && sameKind(claim, method));
  if (own.length === 0) return emptyCell(bid.id);
  return { ...stated(bid, own, setting), status: "not comparable", lines: reasons(own, setting) };
}

function stated(bid: BidEvaluation, claims: readonly Claim[], setting: Setting): Cell {
  return {
    ...emptyCell(bid.id),
    status: statedStatus(bid, claims, setting),
    statements: claims.map((claim) => statementOf(bid, claim, setting)),
    marks: marksOnClaims(
      bid,
      claims.map(({ id }) => id),
      setting.units,
    ),
  };
}

/** A property that takes a figure is not shown by words alone. */
function statedStatus(bid: BidEvaluation, claims: readonly Claim[], { property }: Setting): Cell["status"] {
  if (claims.some(({ id }) => isOverClaimed(bid, id))) return "over-claimed";
  return property.kind === "quantity" && claims.every(({ value }) => value.kind === "words") ? "not shown" : null;
}

/** Why figures can't be compared and what to ask, each sentence once. */
function reasons(claims: readonly Claim[], { reference }: Setting): readonly string[] {
  if (reference === null) return [];
  const sentences = claims.flatMap((claim) => {
    const verdict = comparability(claim.property, reference, claim.method);
    return verdict.kind === "not-comparable" ? [verdict.reason, `Ask: ${verdict.ask}`] : [];
  });
  return [...new Set(sentences)];
}

function statementOf(bid: BidEvaluation, claim: Claim, { property, reference, units }: Setting): Statement {
  const { value, method, condition } = claim;
  const verdict = reference === null ? null : comparability(claim.property, reference, method);
  const note = verdict?.kind === "comparable" ? verdict.note : "";
  const facts = [
    { label: "As entered", text: value.kind === "quantity" ? value.quantity.asEntered : "" },
    {
      label: "Method",
      text: property.methods.length === 0 ? "" : method === "not-stated" ? "not stated" : methodOf(method).designation,
    },
    { label: "Comparing", text: note },
    { label: "Condition", text: formatCondition(condition) },
  ].filter(({ text }) => text !== "");
  return {
    id: claim.id,
    ...claimedValue(claim, property, units),
    qualifier: isConditionStated(condition) ? formatCondition(condition) : "",
    level: levelOf(claim.evidence),
    facts: [
      ...facts,
      ...provenanceFacts(value.kind === "words" ? { ...claim, words: "" } : claim),
      ...(claim.note === "" ? [] : [{ label: "Owner’s note", text: claim.note }]),
      ...earlierFacts(claim.id, bid.answers),
    ],
  };
}

function claimedValue({ value }: Claim, property: Property, units: UnitSystem): NumberAndUnit {
  switch (value.kind) {
    case "quantity": {
      const { quantity } = value;
      return numberAndUnit(formatClaimed(property.id, quantity, units), quantity.dimension, shownIn(property, units));
    }
    case "choice": {
      const choices = property.kind === "choice" ? property.choices : [];
      return { text: inSentence(choices.find(({ id }) => id === value.choice)?.label ?? value.choice), unit: "" };
    }
    case "words":
      return { text: `“${value.words}”`, unit: "" };
  }
}

/** The rows of one group of properties. A property that no bid speaks of and nobody asks for is left out. */
export function claimedRows(
  group: PropertyGroup,
  { bids: entered, requirements }: Project,
  bids: readonly BidEvaluation[],
  units: UnitSystem,
): readonly Row[] {
  const asked = new Set(bids.flatMap(({ reading: { shown, said, missing } }) => [...shown, ...said, ...missing]));
  return properties
    .filter((property) => property.group === group)
    .flatMap((property) => {
      const claimed = bids.map((bid) => ({
        bid,
        claims: claimsFor(entered.find(({ id }) => id === bid.id)?.claims ?? [], property.id),
      }));
      const isSpokenOf = claimed.some(({ claims }) => claims.length > 0);
      return isSpokenOf || asked.has(property.id) ? rowsOf(property, requirements, claimed, units) : [];
    });
}
