import {
  countedLines,
  type FlowSetting,
  flowsOf,
  type GivenBy,
  type PriceLine,
  resolvedLines,
  studyYearsOf,
} from "#lib/cost";
import { fieldArea } from "#lib/field";
import { intervalOfFigure } from "#lib/figure";
import type { PlannedReset } from "#lib/impact";
import type { Project } from "./model";

/** How a bid stands to the price line of a planned reset. Years count from the base date, as price lines do. */
export type ResetPrice = Readonly<{ bid: string }> &
  Readonly<
    | { kind: "not-priced" }
    /** The bid has no price line of that name. */
    | { kind: "no-line" }
    /** Paid in the year of the reset; cents in constant money, not rounded. */
    | { kind: "paid"; cents: number; givenBy: GivenBy }
    /** The line is paid, but not in the year of the reset. */
    | { kind: "other-years"; years: readonly number[] }
    | { kind: "after-study"; studyYears: number }
  >;

export type PricedReset = Readonly<{ reset: PlannedReset; bids: readonly ResetPrice[] }>;

/** Upper and lower case and spaces decide nothing in the name of a price line. */
const plainLabel = (label: string): string => label.trim().toLowerCase().replace(/\s+/g, " ");

/** The names of the price lines of all bids, each once, in the order of the bids. */
export function priceLineLabels(bids: readonly Readonly<{ prices: readonly PriceLine[] }>[]): readonly string[] {
  const labels = new Map<string, string>();
  for (const { label } of bids.flatMap(({ prices }) => prices)) {
    const key = plainLabel(label);
    if (key !== "" && !labels.has(key)) labels.set(key, label.trim());
  }
  return [...labels.values()];
}

/** Each planned reset with what each bid asks for it in that year. */
export function resetPrices({ brief, requirements, bids }: Project): readonly PricedReset[] {
  const area = intervalOfFigure(fieldArea(brief.field))?.low;
  if (area === undefined) throw new RangeError("a field without an area: its schema let it through");
  const setting = { area, ...studyYearsOf(brief.money) };
  const counted = bids.map(({ id, prices }) => ({
    bid: id,
    lines: resolvedLines(countedLines(prices, brief.money).counted, area),
  }));
  return (requirements.impact.outlook?.resets ?? []).map((reset) => ({
    reset,
    bids: counted.map(({ bid, lines }) => ({ bid, ...priceOf(reset, lines, setting) })),
  }));
}

type Price = ResetPrice extends infer One ? (One extends ResetPrice ? Omit<One, "bid"> : never) : never;

function priceOf({ year, priceLine }: PlannedReset, prices: readonly PriceLine[], setting: FlowSetting): Price {
  if (priceLine === "") return { kind: "not-priced" };
  const lines = prices.filter(({ label }) => plainLabel(label) === plainLabel(priceLine));
  if (lines.length === 0) return { kind: "no-line" };
  if (year > setting.studyYears) return { kind: "after-study", studyYears: setting.studyYears };
  const streams = lines.flatMap((line) => flowsOf(line, setting).map(({ stream }) => stream));
  const paidIn = (at: number) => streams.reduce((sum, stream) => sum + (stream[at] ?? 0), 0);
  const cents = paidIn(year);
  const givenBy = lines.every((line) => line.givenBy === "bid") ? "bid" : "owner-estimate";
  if (cents > 0) return { kind: "paid", cents, givenBy };
  const years = Array.from({ length: setting.studyYears + 1 }, (_, at) => at).filter((at) => paidIn(at) > 0);
  return { kind: "other-years", years };
}
