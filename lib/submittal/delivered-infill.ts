import { type In, type Interval, measured } from "#lib/quantity";

/** One load with what is known of its water. Without moisture the dry mass is at most what was weighed. */
export type WeighTicket = Readonly<{
  component: string;
  mass: In<"kg">;
  /** Water as a share of the wet mass, or of the dry mass; null where nobody measured it. */
  moisture: Readonly<{ share: number; of: "wet mass" | "dry mass" }> | null;
}>;

/** What came of one component and what lies on the field of it. */
export type DeliveredInfill = Readonly<{
  component: string;
  tickets: number;
  /** Dry mass over the area; a range where moisture is not known. */
  arealDensity: Interval<"kg/m²">;
  /** How it stands to what was specified or bid. */
  verdict: "as wanted" | "short" | "over" | "not decided";
  /** Dry mass that is missing (positive) or too much, at the lower and upper end. */
  missing: Interval<"kg">;
}>;

/** What is wanted of one component and what was left over. */
export type WantedInfill = Readonly<{
  component: string;
  arealDensity: In<"kg/m²">;
  /** Share of it by which the delivered figure may differ. */
  tolerance: number;
  /** Left over and taken away again. */
  leftOver: In<"kg">;
  /** The most water that the material may hold, as a share of the wet mass, where nobody measured it. */
  mostMoisture: number;
}>;

function dryMass({ mass, moisture }: WeighTicket, mostMoisture: number): Readonly<{ low: number; high: number }> {
  if (moisture === null) return { low: mass * (1 - mostMoisture), high: mass };
  const dry = moisture.of === "wet mass" ? mass * (1 - moisture.share) : mass / (1 + moisture.share);
  return { low: dry, high: dry };
}

/**
 * Dry infill mass on the field from weigh tickets, against what was wanted.
 * @param area filled, in m²
 * @throws RangeError if the area is not above 0 or a moisture is not a share: a schema let it through
 * @source derived from the definitions of water content on wet and on dry mass
 */
export function deliveredInfill(
  wanted: WantedInfill,
  tickets: readonly WeighTicket[],
  area: In<"m²">,
): DeliveredInfill {
  if (!(area > 0)) throw new RangeError(`the area must be above 0 m², got ${area}`);
  const own = tickets.filter(({ component }) => component === wanted.component);
  for (const { moisture } of own)
    if (moisture !== null && !(moisture.share >= 0 && (moisture.of === "dry mass" || moisture.share < 1)))
      throw new RangeError(`no share of water in ${moisture.share}`);
  const dry = own.map((ticket) => dryMass(ticket, wanted.mostMoisture));
  const placed = (side: "low" | "high") => dry.reduce((sum, mass) => sum + mass[side], 0) - wanted.leftOver;
  const [low, high] = [placed("low") / area, placed("high") / area];
  const slack = wanted.tolerance * wanted.arealDensity * (1 + 1e-9);
  const [least, most] = [wanted.arealDensity - slack, wanted.arealDensity + slack];
  const verdict =
    high < least ? "short" : low > most ? "over" : low >= least && high <= most ? "as wanted" : "not decided";
  return {
    component: wanted.component,
    tickets: own.length,
    arealDensity: { low: measured("arealDensity", low), high: measured("arealDensity", high) },
    verdict,
    missing: {
      low: measured("mass", wanted.arealDensity * area - placed("high")),
      high: measured("mass", wanted.arealDensity * area - placed("low")),
    },
  };
}
