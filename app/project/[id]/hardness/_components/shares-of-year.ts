import type { ChanceYear } from "#lib/impact";

/** Bounds of the parts of all locations in one year, from 0 to 1, the softest at the foot. */
export type SharesYear = Readonly<{
  year: number;
  foot: number;
  soft: number;
  window: number;
  below: number;
  top: number;
}>;

/** The parts from the foot up; "below" ends where the limit begins. */
export const shareKinds = [
  { id: "soft", label: "softer than the target window", from: "foot", to: "soft" },
  { id: "window", label: "in the target window", from: "soft", to: "window" },
  { id: "above", label: "above it, below the limit", from: "window", to: "below" },
  { id: "over", label: "at or above the limit", from: "below", to: "top" },
] as const satisfies readonly Readonly<{ id: string; label: string; from: keyof SharesYear; to: keyof SharesYear }>[];

/** The parts of each year; years without a spread over the field are left out. */
export const sharesOf = (years: readonly ChanceYear[]): readonly SharesYear[] =>
  years.flatMap(({ year, locations }) => {
    if (locations === null) return [];
    const soft = locations.locationBelowWindow;
    const window = soft + locations.locationInWindow;
    return [{ year, foot: 0, soft, window, below: Math.max(window, locations.locationMeets), top: 1 }];
  });
