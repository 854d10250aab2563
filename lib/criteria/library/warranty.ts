import type { LibraryEntry } from "./model";

const everyBid = { kind: "every-bid" } as const;
const inContract = { least: "guaranteed", shortfall: "counts-as-worst", discount: "" } as const;
const statedAtDiscount = { least: "own-test", shortfall: "discount", discount: "25 %" } as const;

/** What the bidder stands for, and where it has been shown. */
export const warranty = [
  {
    ...{ id: "warranty-length", heading: "warranty", points: "30" },
    criterion: {
      measure: "warranty-years",
      label: "Warranty length",
      reason: "A promise shorter than the life that the price counts on is no promise for that life.",
      source: "8 years is common, as quoted in trade press. The ends of the score: the owner’s.",
      askedOf: everyBid,
      gate: { kind: "at-least", limit: "8 years" },
      valueFunction: { kind: "more-is-better", worst: "6 years", best: "12 years" },
      evidence: inContract,
    },
    limits: [{ says: "8 years is common.", source: "trade press", standing: "quoted" }],
    method: "Read from the warranty itself.",
    asked: "The whole warranty, word for word, with duties, exclusions, remedy and who stands behind it.",
    caution: "Length says nothing of what is covered. Read the terms beside it.",
  },
  {
    ...{ id: "warranted-hardness", heading: "warranty", points: "30" },
    criterion: {
      measure: "warranty-hardness-limit.f355-a",
      label: "Hardness limit under warranty",
      reason: "Without a limit, a device and a basis a warranty says nothing about hardness.",
      source: "140 g through the warranty: specification of a city in California. Nothing from: ASTM F1936, 200 g.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "less-is-better", best: "140 g", worst: "200 g" },
      evidence: inContract,
    },
    limits: [
      {
        says: "At most 140 g through the warranty.",
        source: "specification of a city in California",
        standing: "published",
      },
    ],
    method: "Read from the warranty: the G-max that it promises not to exceed, by ASTM F355 missile A.",
    asked: "Device, method, basis (each point or the average) and the remedy where the limit is passed.",
    caution: "A limit on the average of the points lets single points be far harder.",
  },
  {
    ...{ id: "reference-fields", heading: "warranty", points: "15" },
    criterion: {
      measure: "reference-fields",
      label: "Reference fields with this very system",
      reason: "Fields in use show how a system ages before it is bought.",
      source: "The owner’s: no published limit.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "more-is-better", worst: "0", best: "10" },
      evidence: { least: "stated", shortfall: "keep-open", discount: "" },
    },
    limits: [{ says: "No number is laid down.", source: "", standing: "none" }],
    method: "Counted as the bid lists them: the same carpet, infill and shock layer.",
    asked: "Addresses, year of building, yearly hours and a person to ask, for each.",
    caution: "A newcomer has none. Where you ask for many, few can compete; say why you ask.",
  },
  {
    ...{ id: "oldest-reference-field", heading: "warranty", points: "25" },
    criterion: {
      measure: "oldest-reference-field",
      label: "Age of the oldest reference field",
      reason: "Nobody has seen the system at an age that no field has reached.",
      source: "The owner’s: no published limit. In full at the years of the warranty that is asked for.",
      askedOf: everyBid,
      gate: { kind: "none" },
      valueFunction: { kind: "more-is-better", worst: "1 year", best: "8 years" },
      evidence: statedAtDiscount,
    },
    limits: [{ says: "No age is laid down.", source: "", standing: "none" }],
    method: "Read from the list of reference fields.",
    asked: "The field’s address, year of building, hours a year and its latest impact test.",
    caution: "A newer build can’t have an old field. Where you ask for age, few can compete; say why you ask.",
  },
] as const satisfies readonly LibraryEntry[];
