import { massInTradeUnits } from "#lib/infill";
import type { In, Interval, UnitSystem } from "#lib/quantity";

const number = (value: number): string =>
  new Intl.NumberFormat("en-US", { maximumFractionDigits: value < 100 ? 1 : 0 }).format(value);

/** A mass in the unit that haulers and scales use, without its name. */
export function tradeTons(mass: In<"kg">, units: UnitSystem): number {
  const { shortTons, tonnes } = massInTradeUnits(mass);
  return units === "us" ? shortTons : tonnes;
}

export const tradeTonsName = (units: UnitSystem): string => (units === "us" ? "short tons" : "tonnes");

/** "363 short tons", "145–165 short tons", "at least 145 short tons"; empty where both sides are open. */
export function formatTradeMass({ low, high }: Interval<"kg">, units: UnitSystem): string {
  const ends = [low, high].map((end) => number(tradeTons(end, units)));
  const [lowText, highText] = ends;
  const name = tradeTonsName(units);
  if (Number.isFinite(low) && Number.isFinite(high))
    return lowText === highText ? `${lowText} ${name}` : `${lowText}–${highText} ${name}`;
  if (Number.isFinite(low)) return `at least ${lowText} ${name}`;
  return Number.isFinite(high) ? `at most ${highText} ${name}` : "";
}
