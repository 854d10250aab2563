import {
  bestClaim,
  type Claim,
  claimsFor,
  comparability,
  inSentence,
  type MethodId,
  propertyOf,
  quantityOf,
} from "#lib/claim";
import { say } from "#lib/figure";
import { formatInterval, intervalOf, measured } from "#lib/quantity";
import { claimInput, constantInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { beside, propertyInPhrase, type Span, tagged } from "../span";

const only = (value: number): Span => ({ low: value, high: value });

/** Forces in SI below which specifications usually do not go. `firm` is where a note becomes a question. */
type Floor = Readonly<{
  property: "tuft-bind" | "seam-strength";
  method: MethodId;
  usual: Span;
  firm: Span | null;
  source: string;
  applies: (bid: CheckedBid) => boolean;
}>;

const floors: readonly Floor[] = [
  {
    property: "tuft-bind",
    method: "d1335",
    usual: only(measured("force", 8, "lbf")),
    firm: only(measured("force", 6.8, "lbf")),
    source: "from memory: 8 lbf is usual in specifications, 6.8 lbf stood in an older guideline",
    applies: () => true,
  },
  {
    property: "seam-strength",
    method: "en-12228",
    usual: only(measured("forcePerWidth", 1000, "N/100 mm")),
    firm: null,
    source: "from memory: 1000 N/100 mm for sewn seams in EN 15330-1",
    applies: ({ claims }) => isSewn(claims),
  },
];

/** Glued seams are tested in another way, so the floor is for seams that are said to be sewn. */
function isSewn(claims: readonly Claim[]): boolean {
  const found = bestClaim(claims, { property: "seam-method" });
  return found.ok && found.value.claim.value.kind === "choice" && found.value.claim.value.choice === "sewn";
}

/** Tufts or seams that hold less than specifications usually ask for. */
export const seamOrTuftBindLow: Rule = {
  id: "seam-or-tuft-bind-low",
  title: "Tufts or seams hold less than usual",
  holds:
    "tuft bind by ASTM D1335 and the strength of sewn seams by EN 12228 against what specifications usually ask for",
  tolerance: "none; the floors are from memory",
  check: (bid) =>
    floors
      .filter(({ applies }) => applies(bid))
      .flatMap((floor) => claimsFor(bid.claims, floor.property).flatMap((claim) => belowFloor(bid, claim, floor))),
};

function belowFloor(bid: CheckedBid, claim: Claim, { property, method, usual, firm, source }: Floor): readonly Found[] {
  const quantity = quantityOf(claim, property);
  if (quantity === null || comparability(property, method, claim.method).kind !== "comparable") return [];
  const stated: Span = intervalOf<string>(quantity.reading);
  if (beside(stated, usual) !== "below") return [];
  const belowFirm = firm !== null && beside(stated, firm) === "below";
  const [statedShown, floorShown] = [
    propertyInPhrase(property, stated),
    propertyInPhrase(property, belowFirm ? firm : usual),
  ];
  const label = inSentence(propertyOf(property).label);
  const whose = belowFirm ? "an older guideline asked for" : "specifications usually ask for";
  const { dimension } = quantity;
  const floorText = (system: "us" | "metric") => formatInterval(dimension, tagged(dimension, usual), system);
  return [
    {
      severity: belowFirm ? "needs an answer" : "note",
      claims: [claim.id],
      told: () => ({
        sentence: say`The bid states a ${label} of ${statedShown}; ${whose} at least ${floorShown} (from memory).`,
        question: say`You state a ${label} of ${statedShown}. Is that the lowest or the mean of the tests, on which sample, and what does the warranty say where it does not hold?`,
        working: {
          formula: `${label} ≥ usual floor`,
          inputs: [claimInput(bid, claim), constantInput("Usual floor", `${floorText("us")} (${floorText("metric")})`)],
          assumptions: ["Only figures by the method of the floor, or one that measures alike, are held against it."],
          source,
        },
      }),
    },
  ];
}
