import type { Figure, Working } from "#lib/figure";
import { type Interval, measured } from "#lib/quantity";
import { boundedFigure, derivedFrom } from "./bounded-figure";
import { inBoth } from "./component";
import type { Payload } from "./model";

/** What a truck usually carries of loose material; road limits and the hauler decide. */
export const usualPayload: Payload = {
  value: measured("mass", 22, "short ton"),
  text: "22 short tons (20.0 t)",
  source: "common practice, no source",
};

/** Converting units leaves a last bit; that much over a full load is no further truck. */
const lastBit = 1e-9;

const wholeLoads = (loads: number) => Math.ceil(loads * (1 - lastBit));

const workingOf = (hauled: Interval<"kg">, payload: Payload): Working => ({
  formula: "loads = mass ÷ payload, rounded up to whole loads",
  inputs: [
    { label: "mass", text: inBoth("mass", hauled), from: { kind: "figure", figure: "stabilising-mass" } },
    { label: "payload", text: `${payload.text}; ${payload.source}`, from: { kind: "constant" } },
  ],
  assumptions: ["Materials may share a truck; with separate trucks each material rounds up on its own."],
  source: "derived from the payload",
});

/** Truck loads to haul the mass, each begun load counted whole. @throws RangeError if the payload is not above 0 */
export function truckLoads(mass: Figure<"mass">, payload: Payload = usualPayload): Figure<"count"> {
  if (!(payload.value > 0)) throw new RangeError(`a truck has to carry something, got ${payload.value} kg`);
  return derivedFrom(mass, "count", (hauled) => {
    const loads = { low: wholeLoads(hauled.low / payload.value), high: wholeLoads(hauled.high / payload.value) };
    return boundedFigure("count", loads, () => workingOf(hauled, payload), "a mass with an upper limit");
  });
}
