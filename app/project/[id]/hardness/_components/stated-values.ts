import { type Property, shownIn } from "#lib/claim";
import type { PropertyYears } from "#lib/evaluation";
import { formatInterval, type Interval, type UnitSystem } from "#lib/quantity";

type Outlook = Extract<PropertyYears["bids"][number]["outlook"], { kind: "outlook" }>;

/** What a bid states by itself where its figures carry no line; nothing between them or beyond is made up. */
export function statedValues(
  { basis, dimension }: Outlook,
  property: Property,
  units: UnitSystem,
): Readonly<{ asNew: string; later: string }> {
  if (basis.kind === "line") return { asNew: "", later: "" };
  const text = ({ low, high }: Readonly<{ low: number; high: number }>) =>
    formatInterval(dimension, { low, high } as Interval<never>, shownIn(property, units)); // in the SI unit of the property
  const [fresh, aged] = [basis.used.filter(({ years }) => years === 0), basis.used.filter(({ years }) => years > 0)];
  return {
    asNew: fresh.map(text).join("; "),
    later: aged.map((value) => `${text(value)} in year ${Number(value.years.toFixed(1))}`).join("; "),
  };
}
