import { bidsInWords } from "#lib/evaluation";
import { type Figure, formatFigure, intervalOfFigure, listed } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";
import { formatTradeMass } from "./trade-mass";

/** A figure of one bid. */
export type Lettered<D extends "length" | "mass"> = Readonly<{ letter: string; figure: Figure<D> }>;

const lowOf = (figure: Figure): number => intervalOfFigure(figure)?.low ?? Number.NaN;
const highOf = (figure: Figure): number => intervalOfFigure(figure)?.high ?? Number.NaN;

const lettersOf = (bids: readonly Readonly<{ letter: string }>[]) => bids.map(({ letter }) => letter);

/** The bids with a figure, those without, and who has least and most; `clear` where no range reaches into theirs. */
function compared<D extends "length" | "mass">(bids: readonly Lettered<D>[]) {
  const known = bids.filter(({ figure }) => figure.kind !== "unknown");
  const [least] = known.toSorted((one, other) => lowOf(one.figure) - lowOf(other.figure));
  const [most] = known.toSorted((one, other) => highOf(other.figure) - highOf(one.figure));
  const without = lettersOf(bids.filter(({ figure }) => figure.kind === "unknown"));
  if (least === undefined || most === undefined) return { known, without, ends: null };
  const clear =
    known.every((bid) => bid === least || lowOf(bid.figure) > highOf(least.figure)) &&
    known.every((bid) => bid === most || highOf(bid.figure) < lowOf(most.figure));
  return { known, without, ends: { least, most, clear } };
}

const sentences = (...parts: readonly (string | false)[]): string => parts.filter((part) => part !== false).join(" ");

/** The summary of the cross-sections: how much fibre stands free, in which bid least and most, and what is not known. */
export function sectionSummary(bids: readonly Lettered<"length">[], units: UnitSystem): string {
  const { known, without, ends } = compared(bids);
  const inWords = ({ letter, figure }: Lettered<"length">) => `bid ${letter} (${formatFigure(figure, units)})`;
  const buried = lettersOf(known.filter(({ figure }) => highOf(figure) < 0));
  const mayBury = lettersOf(known.filter(({ figure }) => lowOf(figure) < 0 && highOf(figure) >= 0));
  return sentences(
    ends !== null &&
      (ends.least === ends.most
        ? `Fibre stands free above the infill in ${listed(known.map(inWords))}.`
        : `The fibre that stands free above the infill ${ends.clear ? "is" : "may be"} shortest in ${inWords(ends.least)} and longest in ${inWords(ends.most)}.`),
    buried.length > 0 && `In ${bidsInWords(buried)} the infill would stand above the pile.`,
    mayBury.length > 0 && `In ${bidsInWords(mayBury)} the infill may reach the top of the pile.`,
    without.length > 0 && `The free pile of ${bidsInWords(without)} is not known.`,
  );
}

/** The summary of the bars: who brings most and least mass, and what is not known. */
export function massSummary(bids: readonly Lettered<"mass">[], units: UnitSystem): string {
  const { known, without, ends } = compared(bids);
  if (ends === null) return "No bid states an infill whose mass can be worked out.";
  const inWords = ({ letter, figure }: Lettered<"mass">) => {
    const mass = intervalOfFigure(figure);
    return mass === null ? `bid ${letter}` : `bid ${letter} (${formatTradeMass(mass, units)})`;
  };
  return sentences(
    ends.least === ends.most
      ? `On the whole field lies the infill of ${listed(known.map(inWords))}.`
      : `${capitalised(inWords(ends.most))} ${ends.clear ? "puts" : "may put"} most infill on the field, ${inWords(ends.least)} least.`,
    without.length > 0 && `The mass of ${bidsInWords(without)} is not known.`,
  );
}
