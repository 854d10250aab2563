// Criteria of the projects that the audit workbook is tested on.

/** What figures are worth, by the figure. */
const scored = (figures: Readonly<Record<string, string>>) =>
  Object.entries(figures).map(([at, value]) => ({ at, value }));
const piecewise = (figures: Readonly<Record<string, string>>) => ({ kind: "piecewise", knots: scored(figures) });
const steps = (counted: "from" | "up-to", otherwise: string, figures: Readonly<Record<string, string>>) => ({
  ...{ kind: "steps", counted, otherwise },
  steps: scored(figures),
});

const criterion = (id: string, measure: string, valueFunction: object, changes: object = {}) => ({
  ...{ id, measure, label: id, reason: "Asked for a test.", gate: { kind: "none" }, weight: "10", valueFunction },
  ...{ evidence: { least: "stated", shortfall: "keep-open" } },
  ...changes,
});

/** Every kind of value function, on figures of every kind. */
export const criteria = [
  // over a figure that is a range, the least and the greatest value lie inside it
  criterion("dip", "warranty-years", steps("from", "0.3", { "5 years": "0.9", "8 years": "0.1", "10 years": "0.8" })),
  criterion(
    "valley",
    "warranty-years",
    piecewise({ "5 years": "0.6", "7 years": "1", "9 years": "0", "12 years": "0.7" }),
  ),
  criterion("edge", "impact-level-as-new", steps("up-to", "0.05", { "104 g": "1", "105 g": "0.5", "106 g": "0.2" })),
  criterion(
    "cost",
    "present-value",
    { kind: "less-is-better", worst: "$2,000,000", best: "$500,000" },
    { weight: "35" },
  ),
  criterion("hour", "cost-per-hour", steps("up-to", "0", { "$30/h": "1", "$60/h": "0.6", "$90/h": "0.2" })),
  criterion("price", "price-at-base-date", piecewise({ "$400,000": "1", "$800,000": "0.7", "$1,600,000": "0" })),
  criterion("area", "annual-cost-per-area", {
    kind: "target-window",
    nothingBelow: "$1/m²",
    fullFrom: "$5/m²",
    fullTo: "$9/m²",
    nothingAbove: "$20/m²",
  }),
  criterion(
    "level",
    "impact-level-as-new",
    { kind: "target-window", nothingBelow: "90 g", fullFrom: "105 g", fullTo: "105 g", nothingAbove: "165 g" },
    { gate: { kind: "below", limit: "165 g" } },
  ),
  criterion(
    "mass",
    "infill-mass-per-area",
    steps("from", "10 %", { "2 lb/ft²": "0.5", "3 lb/ft²": "0.25", "6 lb/ft²": "1" }),
  ),
  criterion("depth", "infill-depth", piecewise({ "5 mm": "0.2", "12 mm": "1", "30 mm": "0" })),
  criterion(
    "warranty",
    "warranty-years",
    { kind: "more-is-better", worst: "4 years", best: "12 years" },
    { evidence: { least: "guaranteed", shortfall: "counts-as-worst" } },
  ),
  criterion("less-proven", "warranty-years", piecewise({ "5 years": "0.2", "9 years": "1", "12 years": "0.5" }), {
    evidence: { least: "guaranteed", shortfall: "discount", discount: "30 %" },
  }),
  // asked of bids A and B, not of the others
  criterion(
    "asked-of-some",
    "warranty-years",
    { kind: "more-is-better", worst: "4 years", best: "12 years" },
    { askedOf: { kind: "bids-where", measure: "impact-level-as-new", is: { kind: "at-most", limit: "106 g" } } },
  ),
  // the condition itself is a range for bid A and unknown for bid C
  criterion(
    "perhaps-asked",
    "impact-level-as-new",
    { kind: "less-is-better", best: "80 g", worst: "130 g" },
    {
      askedOf: { kind: "bids-where", measure: "warranty-years", is: { kind: "at-most", limit: "8 years" } },
      evidence: { least: "guaranteed", shortfall: "discount", discount: "0.5" },
    },
  ),
  criterion(
    "gate-only",
    "warranty-years",
    { kind: "none" },
    { weight: "0", gate: { kind: "at-least", limit: "8 years" } },
  ),
];
