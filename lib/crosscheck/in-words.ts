import { type Claim, inSentence, propertyOf } from "#lib/claim";
import { listed } from "#lib/figure";
import type { Interval } from "#lib/quantity";

/** The properties that claims are about, each once, as they stand inside a sentence. */
export const propertiesOf = (claims: readonly Claim[]): string => listed([...new Set(claims.map(propertyInSentence))]);

/** A span of plain numbers without decimals that nobody wrote: "1,450", "at most 900", "800 to 1,000". */
export function numberSpan({ low, high }: Interval<"1">): string {
  const [lowText, highText] = [low, high].map((value) => value.toLocaleString("en-US"));
  if (low === high) return lowText ?? "";
  if (!Number.isFinite(low)) return `at most ${highText}`;
  return Number.isFinite(high) ? `${lowText} to ${highText}` : `at least ${lowText}`;
}

/** What a claim is about, as it stands inside a sentence. */
export const propertyInSentence = ({ property }: Claim): string => inSentence(propertyOf(property).label);
