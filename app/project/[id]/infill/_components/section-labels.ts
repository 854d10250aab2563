import type { ScaleLinear } from "d3-scale";
import { formatInterval, formatValue, type In, measured, type UnitSystem } from "#lib/quantity";
import type { Band, SectionLayout } from "./section-layout";

const metres = (value: number): In<"m"> => measured("length", value);

/** Words that point at some height of a section: what is there, and how much of it. */
export type SectionLabel = Readonly<{ at: number; what: string; amount: string; strong: boolean }>;

/** What there is to say of one section, with heights on the scale of the drawing. */
export function sectionLabels(
  { layout, freePile }: Readonly<{ layout: SectionLayout; freePile: string | null }>,
  y: ScaleLinear<number, number>,
  units: UnitSystem,
): readonly SectionLabel[] {
  const middle = (one: number, other: number) => (y(one) + y(other)) / 2;
  const bands = layout.bands.map(({ label, bottom, top: upper, thickness: { low, high } }: Band): SectionLabel => {
    const range = { low, high: high ?? metres(Number.POSITIVE_INFINITY) };
    return { at: middle(bottom, upper), what: label, amount: formatInterval("length", range, units), strong: false };
  });
  if (layout.pile === null) return bands;
  const pile: SectionLabel = {
    at: y(layout.pile),
    what: "pile",
    amount: formatValue("length", metres(layout.pile), units),
    strong: false,
  };
  const free: readonly SectionLabel[] =
    freePile === null || layout.pile <= layout.surface
      ? []
      : [{ at: middle(layout.surface, layout.pile), what: "free pile", amount: freePile, strong: true }];
  return [...bands, pile, ...free];
}
