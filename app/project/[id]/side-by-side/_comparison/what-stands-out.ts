import {
  claimsFor,
  comparability,
  familyOf,
  inSentence,
  type MethodId,
  matchMethod,
  methodOf,
  propertyOf,
} from "#lib/claim";
import { isSettled } from "#lib/crosscheck";
import { lackingSentences } from "#lib/document";
import { type BidEvaluation, bidsAtStart, bidsInWords, type Evaluation, type Project } from "#lib/evaluation";
import { type Figure, formatFigure, intervalOfFigure, tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import type { Group } from "./model";

type Read = Readonly<{ project: Project; evaluation: Evaluation; groups: readonly Group[]; units: UnitSystem }>;

const listed = (items: readonly string[]): string =>
  new Intl.ListFormat("en-GB", { type: "conjunction" }).format(items);

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Two to five plain sentences: what differs most, what can't be true or compared, and what is left out. */
export function whatStandsOut(read: Read): readonly string[] {
  return [
    ...spreads(read),
    ...contradictions(read).slice(0, 1),
    ...unlikeImpact(read).slice(0, 1),
    ...otherUnlike(read),
    ...leftOut(read),
  ];
}

type Spread = Readonly<{ least: string; most: string }>;

/** The bids with the smallest and the largest figure, in words; null where fewer than two differ. */
function spread(
  bids: readonly BidEvaluation[],
  figureOf: (bid: BidEvaluation) => Figure,
  units: UnitSystem,
): Spread | null {
  const known = bids.flatMap((bid) => {
    const interval = intervalOfFigure(figureOf(bid));
    return interval === null ? [] : [{ bid, interval }];
  });
  const [least] = known.toSorted((one, other) => one.interval.low - other.interval.low);
  // of an open side only its end is known, so it is no reason to be the most
  const highest = ({ low, high }: { low: number; high: number }) => (Number.isFinite(high) ? high : low);
  const [most] = known.toSorted((one, other) => highest(other.interval) - highest(one.interval));
  if (least === undefined || most === undefined || least.bid.id === most.bid.id) return null;
  const words = ({ bid }: { bid: BidEvaluation }) => `${formatFigure(figureOf(bid), units)} (bid ${bid.letter})`;
  return { least: words(least), most: words(most) };
}

function spreads({ project, evaluation: { bids }, units }: Read): readonly string[] {
  const mass = spread(bids, ({ infill }) => infill.totalArealDensity, units);
  const cost = spread(bids, ({ cost: { presentValue } }) => presentValue, units);
  const parts = [
    mass === null ? "" : `the infill weighs from ${mass.least} to ${mass.most}`,
    cost === null
      ? ""
      : `the cost over ${project.brief.money.studyPeriod.years} years, as a present value, runs from ${cost.least} to ${cost.most}`,
  ].filter((part) => part !== "");
  return [...(parts.length === 0 ? [] : [`${sentenceCase(parts.join("; "))}.`]), ...bids.flatMap(lackingSentences)];
}

const contradictions = ({ evaluation: { bids }, units }: Read): readonly string[] =>
  bids.flatMap(({ letter, findings, answers }) =>
    findings
      .filter((finding) => finding.severity === "can't be true" && !isSettled(finding, answers))
      .map((finding) => `Bid ${letter}: ${tell(finding.sentence, units)}`),
  );

/** How the missile of one method is to that of another, where both drop one and the mass differs. */
function missileNote(got: MethodId, wanted: MethodId): string {
  const [gotDrop, wantedDrop] = [got, wanted].map((id) => familyOf(methodOf(id).measuresLike).drop);
  if (!gotDrop || !wantedDrop || gotDrop.mass === wantedDrop.mass) return "";
  return `, which drops a ${gotDrop.mass < wantedDrop.mass ? "lighter" : "heavier"} missile than ${methodOf(wanted).designation}`;
}

/** Bids whose impact levels all rest on methods unlike the required one. */
function unlikeImpact({ project, evaluation }: Read): readonly string[] {
  const wanted = matchMethod(project.requirements.impact.method);
  if (wanted === null || wanted === "not-stated") return [];
  const strange = evaluation.bids.flatMap(({ id, letter }) => {
    const claims = claimsFor(project.bids.find((bid) => bid.id === id)?.claims ?? [], "g-max");
    const [first] = claims;
    const isStrange = claims.every(({ method }) => comparability("g-max", wanted, method).kind === "not-comparable");
    return first !== undefined && isStrange ? [{ letter, method: first.method }] : [];
  });
  const methods = [...new Set(strange.map(({ method }) => method))];
  const sentences = methods.map((method) => {
    const letters = strange.filter((bid) => bid.method === method).map(({ letter }) => letter);
    const who = bidsAtStart(letters);
    const [gives, its] = letters.length === 1 ? ["gives", "its"] : ["give", "their"];
    return method === "not-stated"
      ? `${who} ${gives} ${its} impact level without a test method, so nobody can tell what it measures.`
      : `${who} ${gives} ${its} impact level by ${methodOf(method).designation}${missileNote(method, wanted)}; nothing converts one into the other.`;
  });
  return sentences.length < 2 ? sentences : [sentences.join(" ")];
}

/** Other properties with a line set apart, and whose figures stand on it. */
function otherUnlike({ evaluation: { bids }, groups }: Read): readonly string[] {
  const letterOf = (id: string) => bids.find((bid) => bid.id === id)?.letter ?? id;
  const apart = new Map<string, Set<string>>();
  for (const { rows } of groups) {
    let label = "";
    for (const row of rows) {
      if (!row.apart) label = row.id === "g-max" ? "" : row.label;
      else if (label !== "") {
        const letters = apart.get(label) ?? new Set();
        for (const cell of row.cells) if (cell.statements.length > 0) letters.add(letterOf(cell.bid));
        apart.set(label, letters);
      }
    }
  }
  const named = [...apart].map(([label, letters]) => `${inSentence(label)} (${bidsInWords([...letters].sort())})`);
  if (named.length === 0) return [];
  const shown = named.length > 4 ? [...named.slice(0, 3), `${named.length - 3} more properties`] : named;
  return [
    `These figures are not by the same method as those of the other bids and stand on lines of their own: ${listed(shown)}.`,
  ];
}

/** Which bids leave out what is asked of all of them. */
function leftOut({ evaluation: { bids } }: Read): readonly string[] {
  const short = bids.filter(({ reading }) => reading.missing.length > 0);
  if (short.length === 0) return [];
  const named = short
    .toSorted((one, other) => other.reading.missing.length - one.reading.missing.length)
    .slice(0, 3)
    .map(({ letter, reading: { missing } }) => {
      const labels = missing.map((id) => inSentence(propertyOf(id).label));
      return `bid ${letter} leaves out ${labels.length > 3 ? `${labels.length} properties that are asked for` : listed(labels)}`;
    });
  const others = short.length - named.length;
  const rest =
    others === 0
      ? []
      : [others === 1 ? "one more bid leaves out something" : `${others} more bids leave out something`];
  return [`${sentenceCase([...named, ...rest].join("; "))}.`];
}
