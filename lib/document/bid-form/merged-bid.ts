import {
  accreditations,
  type ClaimText,
  claimFields,
  claimsFromRows,
  evidenceLevels,
  matchAccreditation,
  matchEvidence,
  matchMethod,
  matchProperty,
  matchTestedBuild,
  methodOf,
  propertyOf,
  testedBuilds,
} from "#lib/claim";
import { costCategories, costLines, priceRoles, shareOfWords } from "#lib/cost";
import type { BidText } from "#lib/evaluation";
import { infillMaterials } from "#lib/material";
import { type EntryTexts, type FormChange, textChanges } from "./change";
import { headingOf } from "./form-rows";
import { notStated, placements } from "./lists";
import type { ComponentText, FilledForm, NamedMaterial, PriceText } from "./model";
import { type Pair, paired } from "./paired";
import { claimsTable, infillTable, singleCells } from "./sheets";

type StandingClaim = BidText["claims"][number];

/** What becomes of entries that the bid holds and the form does not. An owner's estimates are never touched. */
export type Unmentioned = "keep" | "take-out";

export type MergeSetting = Readonly<{
  ownMaterials: readonly NamedMaterial[];
  /** A name for a new entry that none of the names taken is like. */
  idFor: (stem: string, taken: readonly string[]) => string;
  unmentioned: Unmentioned;
}>;

/** A bid with a filled form in it, and what that changes, entry by entry. */
export type MergedBid = Readonly<{ bid: BidText; changes: readonly FormChange[] }>;

/**
 * Puts a filled form into a bid. An entry that the form says again keeps its id and the owner's note; an entry whose
 * text is the same is left as it stands. Where the form's cells are empty for bidder, surface, placement and the sums, the
 * bid's own texts stay.
 */
export function mergedBid(bid: BidText, form: FilledForm, setting: MergeSetting): MergedBid {
  const taken = [...bid.infill.components, ...bid.claims, ...bid.prices].map(({ id }) => id);
  const named = (stem: string): string => {
    const id = setting.idFor(stem, taken);
    taken.push(id);
    return id;
  };
  const head = headMerged(bid, form);
  const claims = listMerged(claimList(bid.claims, form.claims), setting.unmentioned, named);
  const components = listMerged(componentList(bid, form, setting.ownMaterials), setting.unmentioned, named);
  const prices = listMerged(priceList(bid.prices, form.prices), setting.unmentioned, named);
  return {
    bid: {
      ...bid,
      ...head.texts,
      infill: { placement: head.placement, components: [...components.entries] },
      claims: [...claims.entries],
      prices: [...prices.entries],
    },
    changes: [...head.changes, ...components.changes, ...claims.changes, ...prices.changes],
  };
}

function headMerged(bid: BidText, form: FilledForm) {
  const texts = {
    bidder: form.bidder || bid.bidder,
    system: form.system || bid.system,
    statedTotal: form.statedTotal || bid.statedTotal,
    statedTotalInWords: form.statedTotalInWords || bid.statedTotalInWords,
  };
  const says = form.placement !== "" || form.components.length > 0;
  const placement = (says ? form.placement : bid.infill.placement) as BidText["infill"]["placement"];
  const shown = (head: Partial<typeof texts>, lie: string): EntryTexts => ({
    Bidder: head.bidder ?? "",
    "Kind of surface": head.system ?? "",
    "How the materials lie": placements[lie as keyof typeof placements] ?? lie,
    [singleCells.statedTotal.labelText]: head.statedTotal ?? "",
    [singleCells.statedTotalInWords.labelText]: head.statedTotalInWords ?? "",
  });
  const changed = textChanges(shown(bid, bid.infill.placement), shown(texts, placement));
  const changes: readonly FormChange[] =
    changed.length === 0 ? [] : [{ part: "The bid", what: "The bid", kind: "changed", texts: changed }];
  return { texts, placement, changes };
}

/** A list of a bid beside that of the form, and how its entries are told apart, shown and joined. */
type List<T extends Readonly<{ id: string }>> = Readonly<{
  part: FormChange["part"];
  pairs: readonly Pair<T>[];
  whatOf: (entry: T) => string;
  textsOf: (entry: T) => EntryTexts;
  stemOf: (entry: T) => string;
  withId: (entry: T, id: string) => T;
  /** The form's entry with what the bidder has no say in taken from the standing one. */
  joined: (before: T, after: T) => T;
  /** Whether an entry is the owner's own, so that no form takes it out. */
  isOwners: (entry: T) => boolean;
}>;

function listMerged<T extends Readonly<{ id: string }>>(
  { part, pairs, whatOf, textsOf, stemOf, withId, joined, isOwners }: List<T>,
  unmentioned: Unmentioned,
  named: (stem: string) => string,
): Readonly<{ entries: readonly T[]; changes: readonly FormChange[] }> {
  const entries: T[] = [];
  const changes: FormChange[] = [];
  for (const pair of pairs) {
    switch (pair.kind) {
      case "said":
        entries.push(withId(pair.after, named(stemOf(pair.after))));
        changes.push({ part, what: whatOf(pair.after), kind: "added", texts: textChanges({}, textsOf(pair.after)) });
        break;
      case "standing": {
        const { before } = pair;
        if (unmentioned === "keep" || isOwners(before)) entries.push(before);
        if (!isOwners(before))
          changes.push({ part, what: whatOf(before), kind: "gone", texts: textChanges(textsOf(before), {}) });
        break;
      }
      case "both": {
        const both = joined(pair.before, pair.after);
        const texts = textChanges(textsOf(pair.before), textsOf(both));
        entries.push(texts.length === 0 ? pair.before : both);
        changes.push({ part, what: whatOf(both), kind: texts.length === 0 ? "unchanged" : "changed", texts });
        break;
      }
    }
  }
  return { entries, changes };
}

/** A note of the owner's with what the form adds to it. */
function noteOf(before: string | undefined, after: string | undefined): string {
  const [standing, added] = [before ?? "", after ?? ""];
  return added === "" || standing.includes(added) ? standing : [standing, added].filter(Boolean).join(" ");
}

const trimmed = (text: string | undefined): string => (text ?? "").trim();

/** A claim with the entries that an empty field stands for, as pasted rows are read. */
function completed(claim: StandingClaim): StandingClaim {
  const held: Readonly<Record<string, unknown>> = claim;
  const row = claimFields.map((field) => (typeof held[field] === "string" ? held[field] : ""));
  return claimsFromRows([claimFields, row]).claims[0]?.claim ?? claim;
}

/** What an entry of a list is called; "not stated" as everywhere in the form. */
const labelOf = (list: readonly Readonly<{ id: string; label: string }>[], id: string | null): string | undefined =>
  id === "not-stated" ? notStated : list.find((entry) => entry.id === id)?.label;

/** A claim in the words of the ledger, so that an id and a label are no difference. */
function claimTexts(standing: StandingClaim): EntryTexts {
  const claim = completed(standing);
  const method = matchMethod(claim.method ?? "");
  const property = matchProperty(claim.property);
  const label = property === null ? undefined : propertyOf(property);
  const figure = trimmed(claim.figure);
  const answers = label?.kind === "choice" ? label.choices : [];
  const shown: Readonly<Record<string, string | undefined>> = {
    ...claim,
    property: label?.label,
    figure: answers.find((answer) => answer.id === figure || answer.label.toLowerCase() === figure.toLowerCase())
      ?.label,
    method: method === null ? undefined : method === "not-stated" ? notStated : methodOf(method).designation,
    condition: trimmed(claim.condition) || notStated,
    evidence: evidenceLevels.find(({ id }) => id === matchEvidence(claim.evidence))?.label,
    accreditation: labelOf(accreditations, matchAccreditation(claim.accreditation ?? "")),
    build: labelOf(testedBuilds, matchTestedBuild(claim.build ?? "")),
  };
  const held: Readonly<Record<string, unknown>> = claim;
  return Object.fromEntries(
    claimFields.map((field) => {
      const heading = field === "note" ? "Note" : headingOf(claimsTable, field);
      const written = held[field];
      return [heading, trimmed(shown[field] ?? (typeof written === "string" ? written : ""))];
    }),
  );
}

const key = (texts: EntryTexts, ...fields: readonly string[]): string =>
  JSON.stringify(fields.map((field) => texts[field] ?? ""));

function claimList(before: readonly StandingClaim[], after: readonly ClaimText[]): List<StandingClaim> {
  const texts = new Map([...before, ...after].map((claim) => [claim, claimTexts(claim)] as const));
  const by =
    (...fields: readonly (keyof ClaimText)[]) =>
    (claim: StandingClaim) =>
      key(texts.get(claim) ?? {}, ...fields.map((field) => headingOf(claimsTable, field as "property")));
  const all = claimFields.filter((field) => field !== "note");
  return {
    part: "Claims",
    pairs: paired<StandingClaim>(before, after, [
      by(...all),
      by("property", "condition", "method", "testField"),
      by("property", "condition", "method"),
      by("property", "condition"),
      by("property", "figure"),
      by("property"),
    ]),
    whatOf: (claim) => {
      const texts = claimTexts(claim);
      const condition = texts[headingOf(claimsTable, "condition")] ?? notStated;
      const property = texts[headingOf(claimsTable, "property")] || "No property named";
      return condition === notStated ? property : `${property}, ${condition}`;
    },
    textsOf: claimTexts,
    withId: (claim, id) => ({ ...claim, id }),
    stemOf: ({ property }) => matchProperty(property) ?? "claim",
    joined: (standing, said) => ({ ...standing, ...said, id: standing.id, note: noteOf(standing.note, said.note) }),
    isOwners: () => false,
  };
}

function componentList(bid: BidText, form: FilledForm, own: readonly NamedMaterial[]): List<ComponentText> {
  const label = (id: string) => [...own, ...infillMaterials].find((material) => material.id === id)?.label ?? id;
  const textsOf = (component: ComponentText): EntryTexts => {
    const evidence = evidenceLevels.find(({ id }) => id === matchEvidence(component.evidence))?.label;
    const shown = { ...component, material: label(component.material), evidence: evidence ?? component.evidence };
    return Object.fromEntries(
      infillTable.columns.flatMap((column) =>
        column.kind === "entry" ? [[column.heading, trimmed(shown[column.field])]] : [],
      ),
    );
  };
  return {
    part: "Infill",
    pairs: paired<ComponentText>(bid.infill.components, form.components, [
      (component) => JSON.stringify(textsOf(component)),
      ({ material }) => material,
    ]),
    whatOf: ({ material }) => label(material) || "No material named",
    textsOf,
    withId: (component, id) => ({ ...component, id }),
    stemOf: ({ material }) => (/^[a-z0-9][a-z0-9-]{0,50}$/.test(material) ? material : "component"),
    joined: (standing, said) => ({ ...said, id: standing.id }),
    isOwners: () => false,
  };
}

function priceList(before: readonly PriceText[], after: readonly PriceText[]): List<PriceText> {
  const label = (price: PriceText) => trimmed(price.label).toLowerCase();
  // what the owner estimates is never the same thing as what a form says
  const by = (name: (price: PriceText) => string) => (price: PriceText) =>
    isBidders(price) ? name(price) : `the owner's: ${price.id}`;
  return {
    part: "Prices",
    pairs: paired<PriceText>(before, after, [
      by((price) => JSON.stringify([label(price), price.kind, price.amount])),
      by((price) => JSON.stringify([label(price), price.kind])),
      by(label),
    ]),
    whatOf: (price) => trimmed(price.label) || "A price without a name",
    textsOf: priceTexts,
    withId: (price, id) => ({ ...price, id }),
    stemOf: () => "price",
    joined: joinedPrice,
    isOwners: (price) => !isBidders(price),
  };
}

const isBidders = ({ givenBy }: PriceText): boolean => givenBy === "bid";

/**
 * Rules for the end of the study are the owner's, and so are what the price is spent on, whether it is accepted, and
 * its life and its place in the bid where the form gives none.
 */
function joinedPrice(standing: PriceText, said: PriceText): PriceText {
  const { purpose, id, note } = standing;
  const own = { purpose, id, note: noteOf(note, said.note), role: joinedRole(standing.role, said.role) };
  if (standing.kind !== "replacement-chain" || said.kind !== "replacement-chain") return { ...said, ...own };
  const { removalAtStudyEnd, residual, statedResidual, reuse, firstReplacement, replacedShare } = standing;
  const life =
    trimmed(said.life) === "" && standing.lifeGivenBy === "owner-estimate"
      ? { life: standing.life, lifeGivenBy: standing.lifeGivenBy }
      : {};
  const removal =
    said.removal === null && standing.removalGivenBy !== "bid"
      ? { removal: standing.removal, removalGivenBy: standing.removalGivenBy }
      : {};
  const ends = {
    ...{ reuse, firstReplacement, replacedShare, statedResidual },
    ...(removalAtStudyEnd === undefined ? {} : { removalAtStudyEnd }),
    ...(residual === undefined ? {} : { residual }),
  };
  return { ...said, ...ends, ...life, ...removal, ...own };
}

const joinedRole = (standing: PriceText["role"], said: PriceText["role"]): PriceText["role"] =>
  said === undefined ? standing : said.kind === standing?.kind ? { ...standing, ...said } : said;

type AmountText = PriceText["amount"];
const amountText = (amount: AmountText | null | undefined): string => {
  if (!amount) return "";
  switch (amount.kind) {
    case "per-unit":
      return `${trimmed(amount.quantity)} at ${trimmed(amount.unitPrice)}`;
    case "share":
      return `${trimmed(amount.share)} of ${shareOfWords[amount.of] ?? trimmed(amount.of)}`;
    default:
      return trimmed(amount.price);
  }
};

/** A price line in words. What the owner decides about it is left out, and so is who gives it. */
function priceTexts(price: PriceText): EntryTexts {
  const { id: _, kind, givenBy: __, amount, role = { kind: "base-bid" }, ...rest } = price;
  const held: Readonly<Record<string, unknown>> = rest;
  const text = (field: string): string => {
    const written = held[field];
    return typeof written === "string" ? written.trim() : "";
  };
  return {
    "What it is for": trimmed(price.label),
    "Place in the bid": priceRoles[role.kind]?.label ?? role.kind,
    "Open until": "expires" in role ? trimmed(role.expires) : "",
    "How it is paid": costLines[kind].label,
    "Counted under": "category" in price ? (costCategories[price.category]?.label ?? price.category) : "",
    Price: amountText(amount),
    Extension: text("statedExtension"),
    "In year": text("year"),
    Every: text("every"),
    "First year": text("from"),
    "Last year": text("to") || text("until"),
    "Years left out": text("except"),
    Life: text("life"),
    "Saved at renewal": text("renewalSaving"),
    "Removal and disposal": "removal" in price ? amountText(price.removal) : "",
    "Growth a year": text("escalation"),
    Document: text("document"),
    Page: text("page"),
    Note: text("note"),
  };
}
