import type { WorkingInput } from "#lib/figure";
import { type DisplayUnit, formatValue, type In, measured } from "#lib/quantity";

/** How times of an impact are shown. */
export const impactTimeShown = { unit: "ms", decimals: 2 } as const satisfies DisplayUnit;

export const fromTrace = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "figure", figure: "impact-trace" },
});

export const gramsText = (level: number): string =>
  formatValue("impactLevel", measured("impactLevel", level), { unit: "g", decimals: 1 });

export const timeText = (time: number): string => formatValue("time", measured("time", time), impactTimeShown);

export const speedText = (speed: In<"m/s">): string =>
  `${formatValue("velocity", speed, "us")} (${formatValue("velocity", speed, "metric")})`;

export const lengthText = (length: In<"m">): string =>
  `${formatValue("length", length, "us")} (${formatValue("length", length, "metric")})`;
