import { listed } from "#lib/figure";

type Setting = Readonly<{ letter: string; way: "off" | "computed" | "stated" }>;

/** "worked out for bids A and B, stated for bid D"; bids without a word are left off. */
export function linkInWords(settings: readonly Setting[]): string {
  const set = (["computed", "stated"] as const).flatMap((way) => {
    const letters = settings.filter((one) => one.way === way).map(({ letter }) => letter);
    if (letters.length === 0) return [];
    return [
      `${way === "computed" ? "worked out" : "stated"} for ${letters.length === 1 ? "bid" : "bids"} ${listed(letters)}`,
    ];
  });
  return set.length === 0 ? "left off" : listed(set);
}
