import { type BidValues, type Comparison, inContention, sameTotal, valueEnds } from "./model";

/** What a bid's total may be while claims are unproven: with all of them at their worst, and at their best. */
export type TotalInterval = Readonly<{ bid: string; low: number; high: number }>;

function totalEnds({ bid, values }: BidValues, shares: readonly number[]): TotalInterval {
  const sum = (end: "low" | "high") =>
    values.reduce((total, value, at) => total + (shares[at] ?? 0) * valueEnds(value)[end], 0);
  return { bid, low: sum("low"), high: sum("high") };
}

/** At the owner's weights: the interval of each bid in contention, and the bid that leads whatever the claims turn out to be, if one does. */
export function totalIntervals(
  comparison: Comparison,
): Readonly<{ totals: readonly TotalInterval[]; certainLeader: string | null }> {
  const totals = inContention(comparison).map((bid) => totalEnds(bid, comparison.shares));
  const leader = totals.find((one) => totals.every((other) => other === one || one.low > other.high + sameTotal));
  return { totals, certainLeader: leader?.bid ?? null };
}
