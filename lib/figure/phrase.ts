import {
  type DimensionName,
  type DisplayUnit,
  formatInterval,
  type In,
  type Interval,
  type SiUnit,
  type UnitSystem,
} from "#lib/quantity";

/** Units that the trade prefers for the thing at hand; the usual unit of a system that is left out. */
export type PreferredUnits = Readonly<Partial<Record<UnitSystem, DisplayUnit>>>;

/** A quantity inside a sentence, kept in SI until somebody reads it. */
export type PhraseQuantity = {
  [D in DimensionName]: Readonly<{ dimension: D; interval: Interval<SiUnit<D>>; shownIn: PreferredUnits }>;
}[DimensionName];

/** Words with quantities between them, as plain data: each reader is told it in units of their own. */
export type Phrase = readonly (string | PhraseQuantity)[];

/** A quantity to stand in a phrase. */
export const quantityInPhrase = <D extends DimensionName>(
  dimension: D,
  quantity: Interval<SiUnit<D>> | In<SiUnit<D>>,
  shownIn: PreferredUnits = {},
): PhraseQuantity =>
  ({
    dimension,
    shownIn,
    interval: typeof quantity === "object" ? quantity : { low: quantity, high: quantity },
  }) as unknown as PhraseQuantity; // the union can't be narrowed by a type that is still open

/** A phrase as a template: say`The pile is ${quantityInPhrase("length", pile)} high.` */
export const say = (
  words: TemplateStringsArray,
  ...parts: readonly (string | number | PhraseQuantity | Phrase)[]
): Phrase => {
  const phrase: (string | PhraseQuantity)[] = [];
  const add = (part: string | PhraseQuantity) => {
    if (part !== "") phrase.push(part);
  };
  for (const [at, text] of words.entries()) {
    add(text);
    const part = parts[at];
    if (part === undefined) continue;
    if (typeof part === "number") add(String(part));
    else if (typeof part === "string" || "dimension" in part) add(part);
    else for (const inner of part) add(inner);
  }
  return phrase;
};

/** The phrase in the reader's units. */
export const tell = (phrase: Phrase, units: UnitSystem): string =>
  phrase.map((part) => (typeof part === "string" ? part : shown(part, units))).join("");

const shown = ({ dimension, interval, shownIn }: PhraseQuantity, units: UnitSystem): string =>
  formatInterval(dimension, interval, shownIn[units] ?? units);
