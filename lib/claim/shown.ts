import { atLeastAsStrong } from "./evidence";
import { inSentence, propertyOf } from "./find";
import type { Claim } from "./model";
import type { PropertyId } from "./properties/properties";

/** How a bid stands towards the properties that are asked for. Each of them is in exactly one of the lists. */
export type ClaimsReading = Readonly<{
  /** Shown by an accredited laboratory, a field test or a guarantee. */
  shown: readonly PropertyId[];
  /** Said, or tested by the bidder alone. */
  said: readonly PropertyId[];
  missing: readonly PropertyId[];
  /** The same in plain words. */
  sentence: string;
}>;

/** What the claims show, only say and leave out among the properties that are asked for. */
export function readClaims(claims: readonly Claim[], wanted: readonly PropertyId[]): ClaimsReading {
  const asked = [...new Set(wanted)];
  const claimed = new Set(claims.map(({ property }) => property));
  const proven = new Set(claims.filter(isShown).map(({ property }) => property));
  const shown = asked.filter((property) => proven.has(property));
  const said = asked.filter((property) => claimed.has(property) && !proven.has(property));
  const missing = asked.filter((property) => !claimed.has(property));
  return {
    shown,
    said,
    missing,
    sentence: sentence({ asked: asked.length, shown: shown.length, said: said.length, missing }),
  };
}

const isShown = ({ evidence }: Claim): boolean => atLeastAsStrong(evidence, "accredited-laboratory");

type Counts = Readonly<{ asked: number; shown: number; said: number; missing: readonly PropertyId[] }>;

function sentence({ asked, shown, said, missing }: Counts): string {
  if (asked === 0) return "No properties are asked for.";
  const counts = `Of ${asked} ${asked === 1 ? "property" : "properties"} asked for, ${shown} ${are(shown)} shown by a laboratory, a field test or a guarantee, ${said} ${are(said)} only said and ${missing.length} ${are(missing.length)} missing`;
  if (missing.length === 0) return `${counts}.`;
  return `${counts}: ${missing.map((property) => inSentence(propertyOf(property).label)).join(", ")}.`;
}

const are = (count: number): string => (count === 1 ? "is" : "are");
