import { type Claim, familyOf, methodOf } from "#lib/claim";
import type { WorkingInput } from "#lib/figure";
import { type In, measured } from "#lib/quantity";
import { claimInput, constantInput } from "./inputs";
import type { CheckedBid } from "./model";
import { plainName } from "./same-test";
import { statedFigures } from "./stated-figures";

/** From what height a head-sized missile fell, and what says so. */
export type DropHeight = Readonly<{ height: In<"m">; input: WorkingInput }>;

/**
 * The drop height behind a head injury criterion: that of its method where the method fixes one, else the one that the
 * bid states for the same method and document. Null where none or more than one is stated, or the missile is another.
 */
export function dropHeightOf(bid: CheckedBid, criterion: Claim): DropHeight | null {
  if (criterion.method === "not-stated") return null;
  const { drop, missile } = familyOf(methodOf(criterion.method).measuresLike);
  if (missile !== "e" || drop === null) return null;
  if (drop.height !== null) {
    return {
      height: measured("distance", drop.height),
      input: constantInput("Drop height of the method", drop.heightText),
    };
  }
  const [stated, ...more] = statedFigures(bid.claims, "hic-drop-height").filter(({ claim }) =>
    belongsTogether(claim, criterion),
  );
  if (stated === undefined || more.length > 0 || stated.interval.low !== stated.interval.high) return null;
  return { height: stated.interval.low, input: claimInput(bid, stated.claim) };
}

/** A height that names no method or document of its own is taken to belong to the criterion. */
function belongsTogether(height: Claim, criterion: Claim): boolean {
  const sameMethod = height.method === "not-stated" || height.method === criterion.method;
  const [one, other] = [plainName(height.document), plainName(criterion.document)];
  return sameMethod && (one === "" || other === "" || one === other);
}
