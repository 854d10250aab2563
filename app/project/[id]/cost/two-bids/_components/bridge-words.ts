import { type CostBridge, costDifference } from "#lib/cost";
import { inSentence, listed } from "#lib/figure";
import { formatMoney, formatValue, measured } from "#lib/quantity";

/** What makes two bids differ in cost, in words: by how much, and through what above all. */
export function bridgeWords(
  { start, steps, end }: CostBridge,
  { first, second, currency }: Readonly<{ first: string; second: string; currency: string }>,
): string {
  const { cents, share, verdict } = costDifference(start, end);
  if (cents === 0) return `Bid ${second} costs as much as bid ${first}.`;
  const [more, up] = end > start ? ["more", true] : ["less", false];
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
  return `Bid ${second} costs ${formatMoney(cents, currency)} ${more} than bid ${first}${part}${because}.${but}${firm}`;
}
