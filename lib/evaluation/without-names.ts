import type { Bid, Project } from "./model";

/** How a bidder is called while the name is hidden. */
const byLetter = (letter: string): string => `Bidder ${letter}`;

/** The parts of a bid that people wrote in words. Everything else is read by rules and must not change. */
const inWords = new Set([
  "bidder",
  "system",
  "words",
  "note",
  "document",
  "laboratory",
  "label",
  "asked",
  "answer",
  "testField",
  "comment",
  "reason",
  "dissent",
]);

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The name as a whole word, so that a bidder called “Sand” does not take the sand out of “Sandstone”. */
const wholeWord = (name: string) => new RegExp(`(?<![\\p{L}\\p{N}])${escaped(name)}(?![\\p{L}\\p{N}])`, "gu");

function withoutName<Value>(value: Value, key: string, name: RegExp, instead: string): Value {
  if (typeof value === "string") return (inWords.has(key) ? value.replace(name, () => instead) : value) as Value;
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((part) => withoutName(part, key, name, instead)) as Value;
  return Object.fromEntries(
    Object.entries(value).map(([part, held]) => [part, withoutName(held, part, name, instead)]),
  ) as Value;
}

/** A value without the name of a bid's bidder, wherever words use it. */
const without = <Value>(value: Value, { bidder, letter }: Bid): Value =>
  withoutName(value, "", wholeWord(bidder), byLetter(letter));

const withoutAny = <Value>(value: Value, bids: readonly Bid[]): Value => bids.reduce<Value>(without, value);

/**
 * The project with its bids known by letter only, so that figures are read before names. It takes out the name that the
 * bid is entered under, wherever the bid's own words use it, and what evaluators wrote of any bid; a document or brand that
 * gives the bidder away is not known.
 */
export const withoutNames = ({ bids, committee, ...rest }: Project): Project => ({
  ...rest,
  bids: bids.map((bid) => without(bid, bid)),
  ...(committee === undefined ? {} : { committee: withoutAny(committee, bids) }),
});
