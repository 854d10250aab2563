import { methodOf } from "#lib/claim";
import { formatValue, type In, measured, type PlainDate } from "#lib/quantity";
import { locationLevel } from "./location-level";
import { type LocationVerdict, locationVerdict, locationVerdicts } from "./location-verdict";
import type { ReducedCampaign } from "./reduced-campaign";

/** The clause that a notice is about, as the contract has it. */
export type WarrantyClause = Readonly<{
  /** Where it stands: document, section, page. */
  where: string;
  /** Word for word. */
  words: string;
  limit: In<"g">;
}>;

/** A location whose level is not below the limit of the clause. */
export type WarrantyLocation = Readonly<{
  id: string;
  label: string;
  position: string;
  drops: readonly string[];
  level: In<"g">;
  verdict: LocationVerdict;
}>;

/** What a warranty notice has to state: facts alone, nothing about cause or fault. */
export type WarrantyFacts = Readonly<{
  clause: WarrantyClause;
  date: PlainDate;
  locations: readonly WarrantyLocation[];
  tested: number;
  sentences: readonly string[];
}>;

const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 1 });
const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** Dates, locations, values and clause of a campaign for a notice. */
export function warrantyFacts(
  { campaign, locations, uncertainty }: ReducedCampaign,
  clause: WarrantyClause,
): WarrantyFacts {
  const levelled = locations.flatMap(({ location, drops }) =>
    drops === null ? [] : [{ location, level: locationLevel(drops) }],
  );
  const found = levelled.flatMap(({ location, level }): readonly WarrantyLocation[] => {
    const verdict = locationVerdict(level, clause.limit, uncertainty?.guardBand ?? measured("impactLevel", 0));
    if (verdict === "meets" || verdict === "meets-within-uncertainty") return [];
    const { id, label, x, y, drops } = location;
    return [
      {
        id,
        label,
        position: x === null || y === null ? "position not noted" : `x ${x.asEntered}, y ${y.asEntered}`,
        drops: drops.map((drop) => drop?.asEntered ?? "not made"),
        level,
        verdict,
      },
    ];
  });
  const facts = { clause, date: campaign.date, locations: found, tested: levelled.length };
  return { ...facts, sentences: sentencesOf(facts, campaign) };
}

function sentencesOf(
  { clause, date, locations, tested }: Omit<WarrantyFacts, "sentences">,
  { laboratory, operator, equipment, calibrated, method, edition, weather }: ReducedCampaign["campaign"],
): readonly string[] {
  const who = [laboratory, operator].filter((name) => name !== "");
  const surface = [
    ...(weather.air === null ? [] : [`air ${weather.air.asEntered}`]),
    ...(weather.surface === null ? [] : [`surface ${weather.surface.asEntered}`]),
    ...(weather.moisture === "not-stated" ? [] : [`surface ${weather.moisture}`]),
  ];
  return [
    `On ${date} the field was tested by ${methodOf(method).designation}${edition === "" ? "" : ` (${edition})`} at ${tested} ${tested === 1 ? "location" : "locations"}${who.length === 0 ? "" : ` by ${listed(who)}`}.`,
    ...(equipment === "" && calibrated === null
      ? []
      : [
          `Equipment: ${equipment === "" ? "not named" : equipment}, ${calibrated === null ? "calibration date not noted" : `calibrated on ${calibrated}`}.`,
        ]),
    ...(surface.length === 0 ? [] : [`Conditions: ${listed(surface)}.`]),
    `The clause reads: “${clause.words}” (${clause.where}).`,
    locations.length === 0
      ? `No location was at or above ${grams(clause.limit)}.`
      : `${locations.length === 1 ? "1 location was" : `${locations.length} locations were`} at or above ${grams(clause.limit)}:`,
    ...locations.map(
      ({ label, id, position, drops, level, verdict }) =>
        `${label === "" ? id : label} (${position}): drops ${listed(drops)}, level ${grams(level)}; ${locationVerdicts[verdict]}.`,
    ),
    "These are the facts of the test. They say nothing of the cause, and they are no legal advice.",
  ];
}
