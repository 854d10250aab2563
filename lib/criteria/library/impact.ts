import { fromMemory, nowhere, practice, published, quoted, shownBy, underHeading } from "./terms";

const belowTwoHundred = quoted(
  "Below 200 g at each test point.",
  "ASTM F1936, as a work item of ASTM (WK38153) and trade press give it; that it holds at each point from memory",
);
const guideline = fromMemory("At most 165 g by the same method.", "a guideline of the trade");
const cityClause = published(
  "At most 110 g at 70 °F within 30 days of handover, and at most 140 g through the warranty.",
  "specification of a city in California",
);
const flatMissile =
  "ASTM F355, missile A: a flat 20 lb missile from 24 in. On an installed field by ASTM F1936: three drops a point, of which the mean of the second and the third counts.";
const headForm =
  "A head-sized hemisphere (missile E of ASTM F355, or EN 1177) from rising heights; the height counts at which the head injury criterion reaches 1000.";
const noInjury = "No level of G-max or of the head injury criterion predicts or rules out an injury.";

/** What meets a player who falls, when the field is new and when it is old. */
export const impact = underHeading("impact", [
  {
    id: "impact-as-new",
    measure: "impact-level-as-new",
    label: "Impact level as new",
    reason:
      "A field that starts too hard leaves no room for wear; one that starts too soft tires players and hides loose infill.",
    source: "Limit: ASTM F1936, below 200 g at each test point. Window: the owner’s, no published source.",
    gate: { kind: "below", limit: "200 g" },
    score: { kind: "target-window", nothingBelow: "60 g", fullFrom: "80 g", fullTo: "120 g", nothingAbove: "200 g" },
    points: "30",
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [belowTwoHundred, guideline, cityClause, nowhere("How soft is too soft is nowhere laid down.")],
    method: flatMissile,
    asked:
      "The whole test report: method with edition, laboratory, each point, infill depth at the points, temperature, age of the surface, and whether the tested build is the one offered.",
    caution: noInjury,
  },
  {
    id: "impact-last-year",
    measure: "impact-level-at-horizon",
    label: "Impact level in the last year looked at",
    reason: "What matters is the field that people play on in its last year, not the one on opening day.",
    source: "Nothing from: ASTM F1936, below 200 g at each test point in any year. In full up to: the owner’s.",
    score: { kind: "less-is-better", best: "120 g", worst: "200 g" },
    points: "25",
    evidence: shownBy("own-test"),
    limits: [
      belowTwoHundred,
      published(
        "Tested every year at 10 points of heavy use; a single point above 200 g closes the field until it is put right.",
        "practice of the District of Columbia, Department of General Services, 2021",
      ),
      nowhere("By how much a surface hardens in a year has no published rate."),
    ],
    method: `${flatMissile} Worked out from the bid’s own results at several ages, or from the change a year that the owner assumes.`,
    asked:
      "Results from fields of this very system at three ages or more, each with its age, hours of use and infill depth.",
    caution: noInjury,
  },
  {
    id: "impact-worst-point",
    measure: "impact-level-worst-point",
    label: "Impact level at the hardest point",
    reason: "A player falls on one point and not on the average of a field.",
    source: "ASTM F1936, below 200 g at each test point. In full up to: the owner’s.",
    gate: { kind: "below", limit: "200 g" },
    score: { kind: "less-is-better", best: "130 g", worst: "200 g" },
    points: "15",
    evidence: shownBy("field-tested", "ask-first"),
    limits: [
      belowTwoHundred,
      published(
        "How many points: 8 in the catalogue abstract of the method, 10 in many contracts. Name the number.",
        "ASTM catalogue abstract for 8; from memory for 10",
      ),
    ],
    method: flatMissile,
    asked: "The level at every point of a field with this system, with a plan of the points, not the average alone.",
    caution: noInjury,
  },
  {
    id: "fall-height",
    measure: "critical-fall-height.f1292",
    label: "Critical fall height",
    reason: "Falls on the head are what parents and schools worry about most.",
    source: "1.3 m: World Rugby, Regulation 22. Both ends of the score: the owner’s.",
    score: { kind: "more-is-better", worst: "0.9 m", best: "1.5 m" },
    points: "15",
    evidence: shownBy("accredited-laboratory"),
    limits: [
      quoted(
        "Head injury criterion at most 1000 in a fall from 1.3 m or more, where contact rugby is played.",
        "World Rugby, Regulation 22",
      ),
      fromMemory("Head injury criterion at most 1000.", "ASTM F1292 and EN 1177"),
      nowhere("For football and soccer no height is laid down."),
    ],
    method: headForm,
    asked: "The test report with the drop heights, the criterion at each, and the build and infill depth tested.",
    caution: `${noInjury} A report on G-max can’t show a fall height.`,
  },
  {
    id: "head-injury",
    measure: "head-injury-criterion.f3146",
    label: "Head injury criterion in a fall from 1.3 m",
    reason: "It weighs both how hard and for how long a head-sized missile is stopped.",
    source: "World Rugby, Regulation 22: at most 1000 at 1.3 m. In full up to: the owner’s.",
    gate: { kind: "at-most", limit: "1000" },
    score: { kind: "less-is-better", best: "500", worst: "1000" },
    points: "10",
    evidence: shownBy("accredited-laboratory", "ask-first"),
    limits: [
      quoted("At most 1000 in a fall from 1.3 m.", "World Rugby, Regulation 22"),
      fromMemory("Missile E from 1.3 m.", "ASTM F3146"),
    ],
    method:
      "ASTM F3146: missile E from 1.3 m on the field. Use it beside the critical fall height only where you want both.",
    asked: "The test report with each drop, the build and the infill depth.",
    caution: `${noInjury} It was made for heads, not for joints.`,
  },
  {
    id: "depth-margin",
    measure: "depth-margin",
    label: "Infill depth that may be lost before the limit",
    reason: "Infill moves under play; what counts is how much may go from a spot before it is too hard.",
    source: "The owner’s. The sensitivity behind it is a rule of thumb or the bid’s own results.",
    score: { kind: "more-is-better", worst: "0.2 in", best: "0.8 in" },
    points: "10",
    evidence: shownBy("accredited-laboratory"),
    limits: [
      practice(
        "Half an inch of infill lost raises G-max by about 42 %, for infill with rubber and without a shock layer.",
      ),
      nowhere("How much margin is enough is nowhere laid down."),
    ],
    method: "Worked out from the level as new, the owner’s limit and how the level answers to lost infill.",
    asked: "Levels of this very build with the full infill and with at least half an inch less.",
    caution: "On surfaces with little or no rubber the rule does not hold, and only the bid’s own results count.",
  },
  {
    id: "shock-layer-under-light-infill",
    measure: "shock-layer",
    label: "Shock layer where the infill is light",
    reason: "Where little infill cushions a fall, something else has to, and it has to stay when the infill moves.",
    source: "The owner’s: no published limit. Shock layers are usually 0.3 to 1 in thick (common practice, no source).",
    askedOf: { kind: "bids-where", measure: "infill-mass-per-area", is: { kind: "below", limit: "6 lb/ft²" } },
    gate: { kind: "at-least", limit: "0.4 in" },
    evidence: shownBy("stated", "ask-first"),
    limits: [
      practice("Prefabricated shock layers are 0.3 to 1 in (8 to 25 mm) thick."),
      practice("Heavy layered infill has more than 9 lb/ft², rubber alone about 3 lb/ft²."),
      nowhere("At which mass a shock layer is needed is nowhere laid down."),
    ],
    method: "Thickness as stated, where the infill of the bid comes to less mass per area than the owner’s figure.",
    asked: "Data sheet of the layer: kind, thickness, density, force reduction alone, and its warranty.",
    caution: "Thickness alone does not show how well a layer cushions. Hold the measured impact levels beside it.",
  },
]);
