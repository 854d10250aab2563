import {
  costConventionsSchema,
  costingSchema,
  type LinkFacts,
  type ProjectCost,
  priceLinesSchema,
  projectCost,
} from "#lib/cost";
import { known } from "#lib/figure";
import { measured } from "#lib/quantity";
import { conventionsText } from "../checks/cost-example";
import { lumpSum } from "./lines";

export const area = measured("area", 80_000, "ft²");

const noWorking = { formula: "given", inputs: [], assumptions: [], source: "invented" };

/** The technical figures of a bid with 3 lb/ft² of infill under 0.5 lb/ft² of carpet. */
export const linkFacts = (changes: Partial<LinkFacts> = {}): LinkFacts => ({
  infillMass: known("mass", measured("mass", 240_000, "lb"), noWorking),
  carpetMass: known("arealDensity", measured("arealDensity", 0.5, "lb/ft²"), noWorking),
  weightClass: "not-heavy",
  shockLayerLives: null,
  testLocations: 10,
  hoursPerYear: measured("yearlyUse", 1800),
  area,
  ...changes,
});

type LineText = Readonly<Record<string, unknown>>;

/** A price of the bidder's, paid at the base date unless the changes say otherwise. */
export const price = (id: string, amount: string | object, changes: LineText = {}): LineText => ({
  ...{ kind: "at-base-date", id, label: id, givenBy: "bid", category: "investment" },
  amount: typeof amount === "string" ? lumpSum(amount) : amount,
  ...changes,
});

/** The costs of bids a, b, … with these lines as text, under a costing as text. */
export function costsOf(
  bids: readonly (readonly LineText[])[],
  costing: unknown = {},
  conventions: Readonly<Record<string, string>> = {},
  facts: LinkFacts = linkFacts(),
): ProjectCost {
  return projectCost(toLevel(bids, facts), {
    ...{ area, hoursPerYear: facts.hoursPerYear, costing: costingSchema.parse(costing) },
    conventions: costConventionsSchema.parse({ ...conventionsText, ...conventions }),
  });
}

const toLevel = (bids: readonly (readonly LineText[])[], facts: LinkFacts) =>
  bids.map((lines, index) => {
    const letter = "ABCDEF"[index] ?? "?";
    return { id: letter.toLowerCase(), letter, prices: priceLinesSchema.parse(lines), facts };
  });

/** The plug of a lump sum at the base date. */
export const figurePlug = (text: string) =>
  ({ kind: "figure", price: { kind: "at-base-date", amount: lumpSum(text) } }) as const;
