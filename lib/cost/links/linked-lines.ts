import { inSentence, listed, type Working } from "#lib/figure";
import { workedOutOnReading } from "#lib/once";
import type { Costing, LinkParameters, LinkSetting } from "../costing-model";
import type { LeftOutLine } from "../counted-lines";
import type { LevelledLine } from "../levelling/levelled-line";
import { freeId, ownersLine } from "../levelling/owners-line";
import type { ScopeRow } from "../levelling/scope";
import type { LinkId } from "../link-ids";
import type { CostConventions, PriceLine } from "../model";
import type { LinkFacts, TechnicalLink } from "./model";
import { isSamePurpose } from "./same-purpose";
import { technicalLinks } from "./technical-links";

/** What one link does in one bid. */
export type LinkRow = Readonly<
  | { link: LinkId; label: string; kind: "off"; note: string }
  | { link: LinkId; label: string; kind: "computed"; line: string; working: Working; note: string }
  | { link: LinkId; label: string; kind: "stated"; line: string; note: string }
  /** Wanted, and not counted for the reason given: the same is priced already, or an input is missing. */
  | { link: LinkId; label: string; kind: "not-counted"; because: string }
>;

/** What links work on: the lines of a bid so far, its scope and its technical figures. */
export type LinkedBid = Readonly<{
  id: string;
  lines: readonly LevelledLine[];
  scope: readonly ScopeRow[];
  facts: LinkFacts;
}>;

export type LinkedLines = Readonly<{
  lines: readonly LevelledLine[];
  /** Owner’s estimates that a link takes the place of. */
  leftOut: readonly LeftOutLine[];
  rows: readonly LinkRow[];
}>;

/**
 * The lines of a bid with its technical links at work. A link never counts what the bidder prices already, nor what the
 * checklist holds or plugs; it does take the place of the owner's own estimate for the same purpose.
 */
export function linkedLines(bid: LinkedBid, costing: Costing, conventions: CostConventions): LinkedLines {
  const settings = costing.links.filter((setting) => setting.bid === bid.id);
  let lines = bid.lines;
  const leftOut: LeftOutLine[] = [];
  const rows = Object.values(technicalLinks).map((link): LinkRow => {
    const setting = settings.find((one) => one.link === link.id);
    const done = atWork(link, setting, { ...bid, lines }, costing.linkParameters, conventions);
    lines = done.lines;
    leftOut.push(...done.leftOut);
    return done.row;
  });
  return { lines, leftOut, rows };
}

type AtWork = Readonly<{ lines: readonly LevelledLine[]; leftOut: readonly LeftOutLine[]; row: LinkRow }>;

function atWork(
  link: TechnicalLink,
  setting: LinkSetting | undefined,
  bid: LinkedBid,
  parameters: LinkParameters,
  conventions: CostConventions,
): AtWork {
  const named = { link: link.id, label: link.label } as const;
  const stays = (row: LinkRow): AtWork => ({ lines: bid.lines, leftOut: [], row });
  if (setting === undefined || setting.choice.kind === "off") {
    // words of labels are looked through when somebody reads the note: most links of most bids stay off
    const off = { ...named, kind: "off" } as const;
    return stays(workedOutOnReading(off, { note: () => heldAlready(link, bid) ?? "" }));
  }
  const held = heldAlready(link, bid);
  if (held !== null) return stays({ ...named, kind: "not-counted", because: held });

  const ownEstimates = bid.lines.filter(({ line, origin }) => origin.kind === "bid" && isSamePurpose(link, line));
  if (setting.choice.kind === "stated") {
    const head = { id: `link-${link.id}`, label: link.label, note: "", purpose: link.id } as const;
    const { line, ...joined } = inPlaceOf(
      ownersLine(setting.choice.price, link.category, head),
      link,
      bid,
      ownEstimates,
    );
    return { ...joined, row: { ...named, kind: "stated", line: line.id, note: replacedNote(ownEstimates) } };
  }
  const own = Object.fromEntries(Object.entries(setting.own).filter(([, value]) => value !== undefined));
  const lines = bid.lines.map(({ line }) => line);
  const computed = link.compute({ facts: bid.facts, parameters: { ...parameters, ...own }, lines, conventions });
  if (!computed.ok) return stays({ ...named, kind: "not-counted", because: computed.problem });
  const { kind, line, working } = computed.value;
  if (kind === "changes") {
    const changed = bid.lines.map((one) => (one.line.id === line.id ? { ...one, line } : one));
    return { lines: changed, leftOut: [], row: { ...named, kind: "computed", line: line.id, working, note: "" } };
  }
  const { line: added, ...joined } = inPlaceOf(line, link, bid, ownEstimates);
  return { ...joined, row: { ...named, kind: "computed", line: added.id, working, note: replacedNote(ownEstimates) } };
}

/** Why the same is priced already by somebody whose figure a link may not replace; null where it is not. */
function heldAlready(link: TechnicalLink, { lines, scope }: LinkedBid): string | null {
  const [theirs] = lines.filter(
    ({ line, origin }) =>
      origin.kind === "bid" && line.givenBy === "bid" && line.kind !== "replacement-chain" && isSamePurpose(link, line),
  );
  if (theirs !== undefined)
    return `The bidder’s own price line “${theirs.line.label}” is for the same purpose, so the link does not count.`;
  const row = scope.find(({ item }) => item === link.item);
  switch (row?.outcome.kind) {
    case "plugged":
      return `A plug stands in for ${inSentence(row.label)} already, so the link does not count.`;
    case "in-line":
      return `The bid holds ${inSentence(row.label)} in a price line of its own, so the link does not count.`;
    case "nothing-added":
      return row.standing === "included"
        ? `The bid includes ${inSentence(row.label)}, so the link does not count.`
        : null;
    default:
      return null;
  }
}

/** A line in the place of the owner's estimates for the same purpose. */
function inPlaceOf(line: PriceLine, link: TechnicalLink, { lines }: LinkedBid, estimates: readonly LevelledLine[]) {
  const because = `The technical link for ${inSentence(link.label)} takes its place.`;
  const added = { ...line, id: freeId(line.id, new Set(lines.map((one) => one.line.id))) };
  const stay = lines.filter((one) => !estimates.includes(one));
  return {
    line: added,
    lines: [...stay, { line: added, origin: { kind: "link", link: link.id } as const }],
    leftOut: estimates.map((one) => ({ line: one.line, because })),
  };
}

const replacedNote = (estimates: readonly LevelledLine[]): string =>
  estimates.length === 0
    ? ""
    : `It takes the place of the owner’s estimate ${listed(estimates.map(({ line }) => `“${line.label}”`))}.`;
