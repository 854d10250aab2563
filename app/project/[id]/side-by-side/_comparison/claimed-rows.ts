import {
  type Claim,
  type ClaimComparability,
  claimComparability,
  claimFieldLabels,
  claimsFor,
  comparability,
  evidenceLevels,
  fieldsInWords,
  formatClaimed,
  formatCondition,
  inSentence,
  isConditionStated,
  type MethodId,
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
import { type BidEvaluation, type Evaluation, type Project, referenceMethod } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { convertedCell, type LineSetting } from "./converted-cell";
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

/** A claim, and how it stands towards the method and edition that the line is for. */
type JudgedClaim = Readonly<{ claim: Claim; verdict: ClaimComparability }>;
type BidClaims = Readonly<{ bid: BidEvaluation; all: readonly Claim[]; claims: readonly JudgedClaim[] }>;

const alike: ClaimComparability = { kind: "comparable", cautions: [] };

/** Only figures are measured: a choice or a sentence is read, whatever test stands behind it. */
function judged(claim: Claim, reference: MethodId | null): JudgedClaim {
  const { property, value } = claim;
  if (value.kind !== "quantity") return { claim, verdict: alike };
  return {
    claim,
    verdict: claimComparability(reference === null ? { property } : { property, method: reference }, claim),
  };
}

const isUnlike = ({ verdict }: JudgedClaim): boolean => verdict.kind === "not-comparable";

/** Figures that compare with each other but not with the line: by one kind of method, or by another edition of it. */
type Kind = Readonly<{ method: StatedMethod; isEdition: boolean }>;

function kindOf({ claim: { property, method } }: JudgedClaim, { reference }: LineSetting): Kind {
  const byMethod = reference === null || comparability(property, reference, method).kind === "comparable";
  return { method, isEdition: byMethod };
}

/**
 * A property across the bids: one row for the figures that compare with each other, and a row set apart for each method
 * that does not, so that unlike figures never share a line.
 */
function rowsOf(setting: LineSetting, bids: readonly BidClaims[]): readonly Row[] {
  const { property, units } = setting;
  const unit = property.kind === "quantity" ? unitInHead(property.dimension, shownIn(property, units)) : "";
  const strangers = unlikeKinds(
    bids.flatMap(({ claims }) => claims.filter(isUnlike)),
    setting,
  );
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
      (kind): Row => ({
        id: `${property.id}.${kind.method}${kind.isEdition ? ".edition" : ""}`,
        label: `${property.label}, by ${kindName(kind)}`,
        unit,
        under: "Not comparable with the line above.",
        apart: true,
        cells: bids.map((bid) => apartCell(bid, kind, setting)),
      }),
    ),
  ];
}

/** Each kind once among claims that don't compare with the reference. */
function unlikeKinds(claims: readonly JudgedClaim[], setting: LineSetting): readonly Kind[] {
  const kinds: Kind[] = [];
  for (const claim of claims)
    if (!kinds.some((kind) => isOfKind(claim, kind, setting))) kinds.push(kindOf(claim, setting));
  return kinds;
}

function isOfKind(judged: JudgedClaim, kind: Kind, setting: LineSetting): boolean {
  const { method, isEdition } = kindOf(judged, setting);
  if (isEdition !== kind.isEdition) return false;
  if (method === kind.method) return true;
  if (isEdition || kind.method === "not-stated") return false;
  return comparability(judged.claim.property, kind.method, method).kind === "comparable";
}

const kindName = ({ method, isEdition }: Kind): string =>
  isEdition ? `another edition of ${methodName(method)}` : methodName(method);

function mainCell({ bid, all, claims }: BidClaims, setting: LineSetting): Cell {
  if (claims.length === 0) return convertedCell(bid.id, all, setting) ?? { ...emptyCell(bid.id), status: "not shown" };
  const [like, unlike] = [claims.filter((claim) => !isUnlike(claim)), claims.filter(isUnlike)];
  const elsewhere = unlike
    .slice(0, 1)
    .map((claim) => `Given by ${kindName(kindOf(claim, setting))}, set apart on a line of its own.`);
  if (like.length === 0)
    return { ...emptyCell(bid.id), status: "not comparable", lines: [...elsewhere, ...reasons(unlike)] };
  return { ...stated(bid, like, setting), lines: elsewhere };
}

function apartCell({ bid, claims }: BidClaims, kind: Kind, setting: LineSetting): Cell {
  const own = claims.filter((claim) => isUnlike(claim) && isOfKind(claim, kind, setting));
  if (own.length === 0) return emptyCell(bid.id);
  return { ...stated(bid, own, setting), status: "not comparable", lines: reasons(own) };
}

function stated(bid: BidEvaluation, judged: readonly JudgedClaim[], setting: LineSetting): Cell {
  const claims = judged.map(({ claim }) => claim);
  return {
    ...emptyCell(bid.id),
    status: statedStatus(bid, claims, setting),
    statements: judged.map((each) => statementOf(bid, each, setting)),
    marks: marksOnClaims(
      bid,
      claims.map(({ id }) => id),
      setting.units,
    ),
  };
}

/** A property that takes a figure is not shown by words alone. */
function statedStatus(bid: BidEvaluation, claims: readonly Claim[], { property }: LineSetting): Cell["status"] {
  if (claims.some(({ id }) => isOverClaimed(bid, id))) return "over-claimed";
  return property.kind === "quantity" && claims.every(({ value }) => value.kind === "words") ? "not shown" : null;
}

/** Why figures can't be compared and what to ask, each sentence once. */
function reasons(claims: readonly JudgedClaim[]): readonly string[] {
  const sentences = claims.flatMap(({ verdict }) =>
    verdict.kind === "not-comparable" ? [verdict.reason, `Ask: ${verdict.ask}`] : [],
  );
  return [...new Set(sentences)];
}

function statementOf(bid: BidEvaluation, { claim, verdict }: JudgedClaim, { property, units }: LineSetting): Statement {
  const { value, method, condition } = claim;
  const cautions = verdict.kind === "not-comparable" ? [] : verdict.cautions;
  const facts = [
    { label: "As entered", text: value.kind === "quantity" ? value.quantity.asEntered : "" },
    {
      label: "Method",
      text: property.methods.length === 0 ? "" : method === "not-stated" ? "not stated" : methodOf(method).designation,
    },
    { label: "Comparing", text: cautions.join(" ") },
    { label: "Condition", text: formatCondition(condition) },
    { label: "Measured on", text: fieldsInWords(claim).join(", ") },
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
  { bids, area }: Evaluation,
  units: UnitSystem,
): readonly Row[] {
  const asked = new Set(bids.flatMap(({ reading: { shown, said, missing } }) => [...shown, ...said, ...missing]));
  const lists = bids.map((bid) => ({ bid, all: entered.find(({ id }) => id === bid.id)?.claims ?? [] }));
  return properties
    .filter((property) => property.group === group)
    .flatMap((property) => {
      const spoken = lists.flatMap(({ all }) => claimsFor(all, property.id));
      if (spoken.length === 0 && !asked.has(property.id)) return [];
      const reference = referenceMethod(property.id, requirements, spoken) ?? property.methods[0] ?? null;
      const claimed = lists.map(({ bid, all }) => ({
        bid,
        all,
        claims: claimsFor(all, property.id).map((claim) => judged(claim, reference)),
      }));
      return rowsOf({ property, reference, area, units }, claimed);
    });
}
