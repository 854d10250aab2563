import { formatValue, intervalOf, measured, parseQuantity, type Quantity } from "#lib/quantity";

/** How much infill lay under a test where the claim says so: less than the full depth by a loss, or a depth as such. */
export type InfillState = Readonly<{ kind: "lost" | "deep"; length: Quantity<"length"> }>;

const lostPatterns = [
  /^(?:with )?(.+?) (?:less|of lost|lost) infill(?: depth)?$/i,
  /^(?:with )?(.+?) (?:of )?infill (?:depth )?(?:lost|lower|less|taken out)$/i,
  /^(?:with )?(?:infill|depth)(?: depth)? (?:loss(?: of)?|lost|lowered by|less by) (.+)$/i,
  /^(?:with )?infill (.+?) (?:lower|less)$/i,
];
const deepPatterns = [
  /^(?:with |at )?infill(?: depth)?(?: of)? (.+?)(?: deep)?$/i,
  /^(?:with |at )?(.+?) (?:of |deep )?infill(?: depth)?$/i,
];

/** No field is filled deeper than this. */
const deepest = measured("length", 200, "mm");

/** Reads "0.5 in less infill" and "infill 1.25 in deep"; null for words that say nothing of the depth. */
export function parseInfillState(text: string): InfillState | null {
  for (const [kind, patterns] of [["lost", lostPatterns] as const, ["deep", deepPatterns] as const]) {
    for (const pattern of patterns) {
      const length = lengthIn(pattern.exec(text)?.[1]);
      if (length !== null) return { kind, length };
    }
  }
  return null;
}

function lengthIn(text: string | undefined): Quantity<"length"> | null {
  const parsed = text === undefined ? null : parseQuantity("length", text);
  if (!parsed?.ok) return null;
  const { low, high } = intervalOf(parsed.value.reading);
  return low >= 0 && high <= deepest ? parsed.value : null;
}

/** As people write it; `parseInfillState` reads it back. */
export const formatInfillState = ({ kind, length }: InfillState): string =>
  kind === "lost" ? `${length.asEntered} less infill` : `infill ${length.asEntered} deep`;

/** Whether nothing says that less infill than the full depth was in place. */
export const isAtFullDepth = (infill: InfillState | null): boolean =>
  infill === null || (infill.kind === "lost" && intervalOf(infill.length.reading).high === 0);

/** Depths further apart than this are two depths. @source common practice, no source: a depth is read to 1 mm */
const depthTolerance = measured("length", 1, "mm");

/** Whether two figures were got with as much infill; a depth says nothing certain of a loss. */
export function sameInfill(one: InfillState | null, other: InfillState | null): boolean {
  if (isAtFullDepth(one) || isAtFullDepth(other)) return isAtFullDepth(one) && isAtFullDepth(other);
  if (one === null || other === null || one.kind !== other.kind) return false;
  const [left, right] = [intervalOf(one.length.reading), intervalOf(other.length.reading)];
  return Math.max(0, left.low - right.high, right.low - left.high) <= depthTolerance;
}

/** In a sentence, in both systems of units. */
export function infillInWords(infill: InfillState | null): string {
  if (infill === null || isAtFullDepth(infill)) return "at the full infill depth of the bid";
  const { low, high } = intervalOf(infill.length.reading);
  const metric = formatValue("length", measured("length", (low + high) / 2), "metric");
  const text = `${infill.length.asEntered} (${metric})`;
  return infill.kind === "lost" ? `with ${text} less infill` : `with infill ${text} deep`;
}
