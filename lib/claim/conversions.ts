import { failed, type Interval, intervalOf, type Reading, type Result, succeeded } from "#lib/quantity";
import type { QuantityPropertyId } from "./properties/properties";

/** What a conversion needs besides the figure. */
export type ConversionInput = "field-area" | "air-temperature";

/** Both in SI: m² and K. Null where it is not known. */
export type ConversionInputs = Readonly<{
  "field-area": Interval<"m²"> | null;
  "air-temperature": Interval<"K"> | null;
}>;

/** One property that follows from another by definition, with nothing about the surface assumed. */
export type Conversion = Readonly<{
  from: QuantityPropertyId;
  to: QuantityPropertyId;
  /** In words and symbols. */
  formula: string;
  needs: readonly ConversionInput[];
  /** What has to hold, as a sentence; empty where nothing has to. */
  provided: string;
  source: string;
}>;

type Ends = Readonly<{ low: number; high: number }>;
type Step = (figure: Ends, input: Ends) => Ends;

const times: Step = (figure, input) => ({ low: figure.low * input.low, high: figure.high * input.high });
const over: Step = (figure, input) => ({ low: figure.low / input.high, high: figure.high / input.low });
const less: Step = (figure, input) => ({ low: figure.low - input.high, high: figure.high - input.low });
const plus: Step = (figure, input) => ({ low: figure.low + input.low, high: figure.high + input.high });

/** Height in m from which the football falls. @source EN 12235 and FIFA test method 01, from memory */
const ballDrop: Ends = { low: 2, high: 2 };

const overDrop: Step = (figure) => over(figure, ballDrop);
const timesDrop: Step = (figure) => times(figure, ballDrop);

const ballDropHolds =
  "The ball fell 2 m, and the share is held against that height, not against a rebound from concrete.";
const ballSource = "derived; drop height of EN 12235 and FIFA test method 01 from memory";
const airHolds = "The temperature of the air is the one read beside the peak.";
const areaHolds = "The mass is the one for the whole field, spread over all of it.";

const entry = (
  [from, to]: readonly [QuantityPropertyId, QuantityPropertyId],
  formula: string,
  needs: readonly ConversionInput[],
  [provided, source]: readonly [string, string],
  step: Step,
) => ({ conversion: { from, to, formula, needs, provided, source } satisfies Conversion, step });

const entries: readonly Readonly<{ conversion: Conversion; step: Step }>[] = [
  entry(
    ["ball-rebound", "ball-rebound-share"],
    "share = rebound ÷ drop height of 2 m",
    [],
    [ballDropHolds, ballSource],
    overDrop,
  ),
  entry(
    ["ball-rebound-share", "ball-rebound"],
    "rebound = share × drop height of 2 m",
    [],
    [ballDropHolds, ballSource],
    timesDrop,
  ),
  entry(
    ["surface-temperature-peak", "surface-temperature-rise"],
    "rise = peak − temperature of the air",
    ["air-temperature"],
    [airHolds, "derived"],
    less,
  ),
  entry(
    ["surface-temperature-rise", "surface-temperature-peak"],
    "peak = rise + temperature of the air",
    ["air-temperature"],
    [airHolds, "derived"],
    plus,
  ),
  entry(
    ["infill-total-mass", "infill-total-areal-density"],
    "mass per area = mass ÷ area of the field",
    ["field-area"],
    [areaHolds, "derived"],
    over,
  ),
  entry(
    ["infill-total-areal-density", "infill-total-mass"],
    "mass = mass per area × area of the field",
    ["field-area"],
    [areaHolds, "derived"],
    times,
  ),
  entry(
    ["infill-top-up-mass", "infill-top-up"],
    "top-up per area = yearly top-up ÷ area of the field",
    ["field-area"],
    [areaHolds, "derived"],
    over,
  ),
  entry(
    ["infill-top-up", "infill-top-up-mass"],
    "yearly top-up = top-up per area × area of the field",
    ["field-area"],
    [areaHolds, "derived"],
    times,
  ),
];

/** Every conversion there is. Figures by unlike missiles or apparatus are in none of them. */
export const conversions: readonly Conversion[] = entries.map(({ conversion }) => conversion);

export const conversionBetween = (from: string, to: string): Conversion | null =>
  conversions.find((conversion) => conversion.from === from && conversion.to === to) ?? null;

export const conversionsTo = (to: string): readonly Conversion[] =>
  conversions.filter((conversion) => conversion.to === to);

/** What is in the way of a conversion: an input that nobody gives. */
export type ConversionProblem = Readonly<{ kind: "input-missing"; input: ConversionInput }>;

/** What an input is called inside a sentence. */
export const conversionInputNames: Readonly<Record<ConversionInput, string>> = {
  "field-area": "the area of the field",
  "air-temperature": "the air temperature of the heat reading",
};

/**
 * The reading in the other property, as an interval in its SI unit: as wide as figure and input leave it open.
 * @throws RangeError if the conversion is none of the list
 */
export function convertReading(
  conversion: Conversion,
  reading: Reading,
  inputs: ConversionInputs,
): Result<Interval<string>, ConversionProblem> {
  const found = entries.find((each) => each.conversion === conversion);
  if (found === undefined) throw new RangeError(`no conversion from ${conversion.from} to ${conversion.to}`);
  const [needed] = conversion.needs;
  const input = needed === undefined ? ballDrop : inputs[needed];
  if (needed !== undefined && input === null) return failed({ kind: "input-missing", input: needed });
  const ends = found.step(intervalOf(reading), input ?? ballDrop);
  return succeeded(ends as Interval<string>); // in the SI unit of the property it is converted to
}
