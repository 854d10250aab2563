import { type In, measured } from "#lib/quantity";
import { amountCents } from "./amount";
import type { Amount, PriceLine, ShareOf } from "./model";

/**
 * Lines whose shares know the sum they are taken of and whose parts that outlast another have its lives counted. Works
 * on what came out of it before, too: a share follows when another price of the bid is changed.
 * @param lines those that count, as `countedLines` hands them out, with the owner's additions among them
 * @param area of the whole field, in m²
 */
export function resolvedLines(lines: readonly PriceLine[], area: In<"m²">): readonly PriceLine[] {
  const living = lines.map((line) => withLife(line, lines));
  if (!living.some(hasShare)) return living;
  const sums: Readonly<Record<ShareOf, In<"cent">>> = {
    "base-bid": sumAtBaseDate(living, area, isBaseBid),
    "accepted-bid": sumAtBaseDate(living, area, isOfTheBid),
    "levelled-bid": sumAtBaseDate(living, area, isNoAddOn),
  };
  const resolved = (amount: Amount): Amount => (amount.kind === "share" ? { ...amount, sum: sums[amount.of] } : amount);
  return living.map((line) =>
    line.kind === "replacement-chain"
      ? { ...line, amount: resolved(line.amount), removal: line.removal === null ? null : resolved(line.removal) }
      : { ...line, amount: resolved(line.amount) },
  );
}

const hasShare = (line: PriceLine): boolean =>
  line.amount.kind === "share" || (line.kind === "replacement-chain" && line.removal?.kind === "share");

/** Bonds and taxes come on top of a sum, so no sum that a share is taken of holds them. */
const isNoAddOn = ({ role }: PriceLine): boolean => role.kind !== "bond" && role.kind !== "tax";
const isOfTheBid = (line: PriceLine): boolean => line.givenBy === "bid" && isNoAddOn(line);
const isBaseBid = (line: PriceLine): boolean => line.givenBy === "bid" && line.role.kind === "base-bid";

/** What the chosen lines come to at the base date. Shares are left out: a share is never taken of another one. */
function sumAtBaseDate(lines: readonly PriceLine[], area: In<"m²">, chosen: (line: PriceLine) => boolean): In<"cent"> {
  const cents = lines.reduce((sum, line) => {
    const paidThen = line.kind === "at-base-date" || line.kind === "replacement-chain";
    return paidThen && line.amount.kind !== "share" && chosen(line) ? sum + amountCents(line.amount, area) : sum;
  }, 0);
  return measured("money", cents);
}

/**
 * A line with the life that it takes from another. That one may take its own from a third since a technical link can tie
 * it so; whoever would be asked a second time keeps the life as entered.
 */
function withLife(line: PriceLine, lines: readonly PriceLine[], asked: readonly string[] = []): PriceLine {
  if (line.kind !== "replacement-chain" || line.reuse === null) return line;
  const { line: named, lives } = line.reuse;
  const waiting = [...asked, line.id];
  const found = waiting.includes(named) ? undefined : lines.find(({ id }) => id === named);
  const other = found === undefined ? undefined : withLife(found, lines, waiting);
  if (other?.kind !== "replacement-chain") return line;
  const asEntered = `${lives.years} ${lives.years === 1 ? "life" : "lives"} of “${other.label}” (${other.life.asEntered})`;
  return { ...line, life: { asEntered, years: lives.years * other.life.years } };
}
