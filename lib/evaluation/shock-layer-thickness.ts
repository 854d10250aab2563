import { bestClaim } from "#lib/claim";
import { known } from "#lib/figure";
import { measured } from "#lib/quantity";
import { claimInput } from "./claim-in-words";
import { claimedFigure, type EvidencedFigure } from "./claimed-figure";
import type { Bid } from "./model";

/** How thick the shock layer of a bid is by its own claims, whatever the method; nothing where it says that there is none. */
export function shockLayerThickness({ id, claims }: Bid): EvidencedFigure {
  const kind = bestClaim(claims, { property: "shock-layer" });
  if (kind.ok && kind.value.claim.value.kind === "choice" && kind.value.claim.value.choice === "none") {
    const { claim } = kind.value;
    const working = {
      formula: "0 where there is no shock layer",
      inputs: [claimInput(id, claim)],
      assumptions: [],
      source: "the bid",
    };
    return { figure: known("length", measured("length", 0, "m"), working), evidence: claim.evidence };
  }
  return claimedFigure(id, claims, { property: "shock-layer-thickness" }, null);
}
