import { inSentence, methodOf, propertyOf } from "#lib/claim";
import { quantityInPhrase, say } from "#lib/figure";
import { claimInput } from "../inputs";
import type { CheckedBid, Found, Rule } from "../model";
import { sameCondition } from "../same-test";
import { type StatedFigure, statedFigures } from "../stated-figures";

/** How far repeated infiltration tests differ. */
const scatterShare = 0.1;

/** Water that sinks through the whole build passes each of its layers. */
export const systemDrainsFasterThanItsLayer: Rule = {
  id: "system-drains-faster-than-its-layer",
  title: "The whole build drains faster than one of its layers",
  holds: "the infiltration rate of the system against those of carpet and shock layer, tested in one way",
  tolerance: "10 % for scatter between tests (common practice, no source)",
  check: (bid) =>
    statedFigures(bid.claims, "system-infiltration").flatMap((system) =>
      [
        ...statedFigures(bid.claims, "carpet-infiltration"),
        ...statedFigures(bid.claims, "shock-layer-infiltration"),
      ].flatMap((layer) => foundFor(bid, system, layer)),
    ),
};

type System = StatedFigure<"system-infiltration">;
type Layer = StatedFigure<"carpet-infiltration" | "shock-layer-infiltration">;

function foundFor(bid: CheckedBid, system: System, layer: Layer): readonly Found[] {
  if (!testedAlike(system, layer) || system.interval.low <= layer.interval.high * (1 + scatterShare)) return [];
  const what = inSentence(propertyOf(layer.claim.property).label);
  const [systemShown, layerShown] = [system, layer].map(({ interval }) =>
    quantityInPhrase("infiltrationRate", interval),
  );
  return [
    {
      severity: "needs an answer",
      claims: [system.claim.id, layer.claim.id],
      overClaims: [system.claim.id],
      told: () => ({
        sentence: say`The whole build is said to take ${systemShown ?? ""}, while the bid’s ${what} is ${layerShown ?? ""}. Water that sinks through the build has to pass that layer too.`,
        question: say`Your bid states ${systemShown ?? ""} for the whole build and ${layerShown ?? ""} as ${what}. How were both tested, and could water spread sideways under the ring?`,
        working: {
          formula: "infiltration rate of the system ≤ infiltration rate of each layer",
          inputs: [claimInput(bid, system.claim), claimInput(bid, layer.claim)],
          assumptions: [
            "Water sinks straight down. Under a ring some of it can spread sideways, which raises the figure of the system.",
            "Repeated tests may differ by 10 % (common practice, no source).",
          ],
          source: "derived from conservation of volume",
        },
      }),
    },
  ];
}

const testedAlike = ({ claim: one }: System, { claim: other }: Layer): boolean =>
  one.method !== "not-stated" &&
  other.method !== "not-stated" &&
  methodOf(one.method).measuresLike === methodOf(other.method).measuresLike &&
  sameCondition(one, other);
