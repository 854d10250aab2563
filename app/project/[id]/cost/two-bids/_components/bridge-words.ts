import { type CostBridge, costDifference } from "#lib/cost";
import { boundedGap } from "#lib/document";
import { inSentence, listed } from "#lib/figure";
import { formatMoney, formatValue, measured } from "#lib/quantity";

/** The bids by their letters; `open` are those whose cost is only a least so far. */
export type BridgeWords = Readonly<{ first: string; second: string; currency: string; open: readonly string[] }>;

/** What makes two bids differ in cost, in words: by how much, and through what above all. */
export function bridgeWords({ start, steps, end }: CostBridge, { first, second, currency, open }: BridgeWords): string {
  const { cents, share, verdict } = costDifference(start, end);
  if (cents === 0) return `Bid ${second} costs as much as bid ${first}.`;
  const up = end > start;
  const [lower, higher] = up ? [first, second] : [second, first];
  const gap = boundedGap(`${formatMoney(cents, currency)} ${up ? "more" : "less"}`, {
    isLowerLeast: open.includes(lower),
    isHigherLeast: open.includes(higher),
  });
  const part = Number.isFinite(share) ? ` (${formatValue("fraction", measured("fraction", share), "us")})` : "";
  const told = (those: CostBridge["steps"]) =>
    listed(
      those.slice(0, 2).map(({ label, change }) => `${inSentence(label)} (${formatMoney(Math.abs(change), currency)})`),
    );
  const bySize = steps.toSorted((one, other) => Math.abs(other.change) - Math.abs(one.change));
  const through = bySize.filter(({ change }) => change > 0 === up);
  const against = bySize.filter(({ change }) => change > 0 !== up);
  const because = through.length === 0 ? "" : `, above all through ${told(through)}`;
  const but = against.length === 0 ? "" : ` The other way goes ${told(against)}.`;
  const firm =
    verdict === "inconclusive" ? " A difference under 10 % of the lower cost does not decide (US GSA P100)." : "";
  return `Bid ${second} costs ${gap} than bid ${first}${part}${because}.${but}${firm}`;
}
