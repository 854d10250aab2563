import { measured } from "#lib/quantity";

/**
 * Density of fresh water at about 20 °C, as kg/m³.
 * @source pure water at 20 °C is 998.2 kg/m³ (handbook value, from memory), rounded to 998
 */
export const freshWater = {
  density: measured("bulkDensity", 998),
  text: "998 kg/m³, fresh water at about 20 °C",
  source: "handbook value for pure water at 20 °C, from memory",
} as const;
