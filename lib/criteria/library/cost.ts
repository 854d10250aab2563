import { nowhere, published, quoted, underHeading } from "./terms";

/** What the field asks of the owner in work and money. */
export const cost = underHeading("cost", [
  {
    id: "upkeep-hours",
    measure: "maintenance-hours",
    label: "Upkeep hours a year",
    reason:
      "Grooming keeps infill in place and loose; upkeep that nobody has time for is not done, and the field hardens.",
    source:
      "About one hour of upkeep for ten hours of play, as quoted in trade press. The ends of the score: the owner’s.",
    score: { kind: "less-is-better", best: "60 h/year", worst: "250 h/year" },
    points: "20",
    limits: [
      quoted(
        "About one hour of upkeep for ten hours of play.",
        "people of the trade in a magazine for school administration",
      ),
      nowhere("No number of hours is laid down."),
    ],
    method: "As the bid’s upkeep plan states it, for the yearly hours of use in the brief.",
    asked: "The upkeep plan with tasks, intervals, machines and the records that the warranty asks for.",
    caution:
      "Its cost is in the life-cycle cost already. Weigh here only what money does not show: staff, time, closed hours.",
  },
  {
    id: "annual-cost",
    measure: "annual-cost-per-area",
    label: "Equivalent annual cost per area",
    reason: "The owner pays for the field every year it is in use, not only on the day it opens.",
    source: "The owner’s: no published limit. Set both ends from the budget, before any price is read.",
    score: { kind: "less-is-better", best: "$0.75/ft²", worst: "$1.75/ft²" },
    points: "80",
    limits: [
      published(
        "Five synthetic fields cost $1,212,000 to install on average, and about $377,000 to resurface.",
        "Oregon State University, 2016, in dollars of that year",
      ),
      nowhere("What a field may cost is nowhere laid down."),
    ],
    method: "All costs of the study period at their present value, as equal amounts a year, over the area.",
    asked: "All price lines with their years, and proof for the life of carpet and shock layer.",
    caution: "One criterion of cost is enough: price and life-cycle cost side by side count the same money twice.",
  },
]);
