import { type Figure, inSentence } from "#lib/figure";
import type { Costing, Plug, ScopeEntry, ScopeItem, ScopeStanding } from "../costing-model";
import type { Amount, PriceLine, PriceLineHead } from "../model";
import type { LevelledLine } from "./levelled-line";
import { type ComparableLine, changesWithTheBids, medianPrice, type PricedSetting } from "./median-price";
import { freeId, ownersLine } from "./owners-line";

/** What one item of scope does to the levelled cost of a bid. */
export type ScopeOutcome = Readonly<
  /** It is in the bid, or nobody has asked yet: nothing is added. */
  | { kind: "nothing-added" }
  /** It is in the bid, in the price line of this id. */
  | { kind: "in-line"; line: string }
  /** The line of this id stands in for it; the working tells how a median came about. */
  | { kind: "plugged"; line: string; by: "figure" | "median"; figure: Figure<"money"> | null }
  /** No figure stands for it, so the levelled cost is at least what it says. `question` is for the bidder. */
  | { kind: "open"; because: string; question: string }
>;

/** One item of the checklist as it stands in one bid. */
export type ScopeRow = Readonly<{
  item: string;
  label: string;
  standing: ScopeStanding;
  document: string;
  page: string;
  note: string;
  outcome: ScopeOutcome;
}>;

/** Words for how a bid stands to an item. */
export const scopeStandings: Readonly<Record<ScopeStanding, Readonly<{ label: string; rule: string }>>> = {
  included: { label: "Included", rule: "Nothing is added." },
  excluded: { label: "Excluded", rule: "A plug stands in for its price." },
  unclear: { label: "Unclear", rule: "A plug stands in until the bidder answers." },
  "by-owner": { label: "By the owner", rule: "The owner’s own cost is added." },
  "not-asked": { label: "Not asked yet", rule: "Nothing is added, and nothing is known." },
};

/** A bid as levelling looks at it: the lines that count by their place in it. */
export type ScopedBid = Readonly<{ id: string; letter: string; counted: readonly PriceLine[] }>;

/** The items of one bid and the lines that stand in for what it lacks. */
export type LevelledScope = Readonly<{
  rows: readonly ScopeRow[];
  plugs: readonly LevelledLine[];
  notes: readonly string[];
}>;

/** Entries by bid and item, and for each item the price lines that hold it in the bids that include it. */
export type ScopeIndex = Readonly<{
  entry: (bid: string, item: string) => ScopeEntry | null;
  holding: (item: string) => readonly ComparableLine[];
}>;

export function scopeIndex({ levelling }: Costing, bids: readonly ScopedBid[]): ScopeIndex {
  const byKey = new Map(levelling.map((entry) => [`${entry.bid} ${entry.item}`, entry]));
  const entry = (bid: string, item: string) => byKey.get(`${bid} ${item}`) ?? null;
  const holding = (item: string) =>
    bids.flatMap(({ id, letter, counted }): readonly ComparableLine[] => {
      const found = entry(id, item);
      if (found?.standing !== "included" || found.line === "") return [];
      const line = counted.find((candidate) => candidate.id === found.line && candidate.givenBy === "bid");
      return line === undefined || line.amount.kind === "share" ? [] : [{ bid: id, letter, line }];
    });
  return { entry, holding };
}

/** What the checklist does to one bid. */
export function levelledScope(
  bid: ScopedBid,
  { checklist, levelling }: Costing,
  index: ScopeIndex,
  setting: PricedSetting,
): LevelledScope {
  const taken = new Set(bid.counted.map(({ id }) => id));
  const plugs: LevelledLine[] = [];
  const rows = checklist.map((item): ScopeRow => {
    const entry = index.entry(bid.id, item.id);
    const { standing = "not-asked", document = "", page = "", note = "" } = entry ?? {};
    const { outcome, plug } = outcomeOf(bid, item, entry, { index, taken, setting });
    if (plug !== null) plugs.push(plug);
    return { item: item.id, label: item.label, standing, document, page, note, outcome };
  });
  return { rows, plugs, notes: [...medianNotes(rows), ...notesOn(bid, checklist, levelling)] };
}

type Outcome = Readonly<{ outcome: ScopeOutcome; plug: LevelledLine | null }>;
type Looking = Readonly<{ index: ScopeIndex; taken: Set<string>; setting: PricedSetting }>;

const added = (outcome: ScopeOutcome): Outcome => ({ outcome, plug: null });

function outcomeOf(bid: ScopedBid, item: ScopeItem, entry: ScopeEntry | null, looking: Looking): Outcome {
  if (entry === null || entry.standing === "not-asked") return added({ kind: "nothing-added" });
  if (entry.standing === "included") {
    const isThere = bid.counted.some(({ id }) => id === entry.line);
    return added(isThere ? { kind: "in-line", line: entry.line } : { kind: "nothing-added" });
  }
  return plugged(bid, item, { ...entry, standing: entry.standing }, looking);
}

type Lacking = ScopeEntry & Readonly<{ standing: Exclude<ScopeStanding, "included" | "not-asked"> }>;

function plugged(bid: ScopedBid, item: ScopeItem, entry: Lacking, { index, taken, setting }: Looking): Outcome {
  const { plug } = entry;
  const id = freeId(`plug-${item.id}`, taken);
  const head = { id, label: `${item.label} (${reasons[entry.standing]})`, note: entry.note };
  const counts = (line: PriceLine, by: "figure" | "median", figure: Figure<"money"> | null): Outcome => {
    taken.add(id);
    return {
      outcome: { kind: "plugged", line: id, by, figure },
      plug: { line, origin: { kind: "plug", item: item.id, by } },
    };
  };
  switch (plug.kind) {
    case "figure":
      return counts(ownersLine(plug.price, "owners-addition", head), "figure", null);
    case "median": {
      const others = index.holding(item.id).filter((one) => one.bid !== bid.id);
      const found = medianPrice(others, plug.quantity, setting);
      if (!found.ok) return added(open(item, entry, found.problem));
      const { template, amount, working } = found.value;
      return counts(likeTemplate(template, head, amount), "median", working);
    }
    case "none":
    case "question":
      return added(open(item, entry, noFigure[entry.standing]));
  }
}

const reasons: Readonly<Record<Lacking["standing"], string>> = {
  excluded: "excluded from the bid",
  unclear: "unclear in the bid",
  "by-owner": "by the owner",
};

const noFigure: Readonly<Record<Lacking["standing"], string>> = {
  excluded: "The bid excludes it and no figure stands in for it yet.",
  unclear: "The bid leaves it unclear and no figure stands in for it yet.",
  "by-owner": "The owner sees to it and has given no figure yet.",
};

function open({ label }: ScopeItem, { standing, plug }: Lacking, because: string): ScopeOutcome {
  return { kind: "open", because, question: questionOf(inSentence(label), standing, plug) };
}

function questionOf(what: string, standing: Lacking["standing"], plug: Plug): string {
  if (plug.kind === "question" && plug.asked.trim() !== "") return plug.asked.trim();
  switch (standing) {
    case "excluded":
      return `What would ${what} cost if you added it to your bid?`;
    case "unclear":
      return `Does your price include ${what}? If so, on which page of your bid does it stand; if not, what would it cost?`;
    case "by-owner":
      return `What does the owner have to provide for ${what} under your bid?`;
  }
}

/** The line of another bid with the owner's head and amount. A plug has a life of its own. */
function likeTemplate(
  template: PriceLine,
  head: Readonly<{ id: string; label: string; note: string }>,
  amount: Amount,
): PriceLine {
  const own: PriceLineHead & Readonly<{ amount: Amount }> = {
    ...{ purpose: "", statedExtension: null, document: "", page: "", ...head, amount },
    givenBy: "owner-estimate",
    role: { kind: "base-bid" },
  };
  return template.kind === "replacement-chain"
    ? { ...template, ...own, lifeGivenBy: "owner-estimate", removalGivenBy: "owner-estimate", reuse: null }
    : { ...template, ...own, category: "owners-addition" };
}

const medianNotes = (rows: readonly ScopeRow[]): readonly string[] =>
  rows.flatMap(({ label, outcome }) =>
    outcome.kind === "plugged" && outcome.by === "median"
      ? [`The median of the other bids stands in for ${inSentence(label)}. ${changesWithTheBids}`]
      : [],
  );

function notesOn(bid: ScopedBid, checklist: readonly ScopeItem[], levelling: readonly ScopeEntry[]): readonly string[] {
  const items = new Set(checklist.map(({ id }) => id));
  return levelling
    .filter((entry) => entry.bid === bid.id && entry.standing !== "not-asked")
    .flatMap((entry) => {
      if (!items.has(entry.item)) {
        return [`“${entry.item}” was levelled and is no longer on the checklist, so it does not count.`];
      }
      const isMissing =
        entry.standing === "included" && entry.line !== "" && !bid.counted.some(({ id }) => id === entry.line);
      return isMissing
        ? [`The price line “${entry.line}” that should hold “${entry.item}” is not among the lines that count.`]
        : [];
    });
}
