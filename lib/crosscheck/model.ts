import type { Claim, MethodId } from "#lib/claim";
import type { Figure } from "#lib/figure";

import type { Finding } from "./finding";

/** What the rules look at: a bid's claims and what its infill amounts to. */
export type CheckedBid = Readonly<{
  claims: readonly Claim[];
  totalArealDensity: Figure<"arealDensity">;
  infillDepth: Figure<"length">;
  /** The method by which the requirements ask for impact levels. */
  impactMethod: MethodId;
}>;

/** One rule that holds a bid against itself. It says nothing where an input is missing: that is another matter. */
export type Rule = (bid: CheckedBid) => readonly Finding[];
