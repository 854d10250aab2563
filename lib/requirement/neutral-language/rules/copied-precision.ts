import { legalBases } from "../legal-basis";
import type { Found, LanguageRule } from "../model";
import { phraseList, placesOf } from "../phrase";
import type { Sentence } from "../sentences";
import { type StatedValue, statedValues } from "../stated-values";

const bounds = phraseList([
  "at least|most",
  "not|no less|more|fewer|greater than",
  "not? exceed*",
  "nearest",
  "minimum|min|maximum|max|nominal|nominally|approximately|about|around|tolerance|range|ranging|between|±",
  "up to",
  "less|more|greater|fewer than",
  "or more|greater|less|fewer|heavier|higher|lower|taller|above|over",
  "plus or? /? minus",
  "within",
  "from # ~4 to #",
  "# to #",
  "# –|— #",
  "+ /? −|-",
  "≥|≤|>|<",
  "above|below|under|over #",
]);

/** Words that allow nothing beside the figure, whatever else the sentence says. */
const exactly = phraseList(["exactly|precisely", "no|zero|without tolerance|tolerances|deviation|variation"]);

/** Steps are the usual ones; figures beside a step read as a copy of one data sheet. */
const isOnStep = (value: number, step: number) => Math.abs(value / step - Math.round(value / step)) < 1e-6;

const shown = (value: number) => new Intl.NumberFormat("en-US", { maximumFractionDigits: 3 }).format(value);

/** A window of a tenth to either side, rounded outward to the usual step. */
function windowOf({ value, kind }: StatedValue): string {
  const low = Math.floor((value * 0.9) / kind.step + 1e-9) * kind.step;
  const high = Math.ceil((value * 1.1) / kind.step - 1e-9) * kind.step;
  return `${shown(low)} to ${shown(high)} ${kind.unit}`;
}

function offeredFor(stated: StatedValue): string {
  const { kind } = stated;
  return `“${kind.name}: from ${windowOf(stated)}, by ${kind.method}.” The window is a tenth to either side, rounded outward; set the one that the use of the field needs, or leave the recipe open and fix the result instead.`;
}

function findingOf(stated: StatedValue, isBounded: boolean): readonly Found[] {
  const { value, kind, first, last } = stated;
  const exact = !isBounded && kind.isUsuallyARange;
  const offStep = !isOnStep(value, kind.step);
  if (!exact && !offStep) return [];
  const why = offStep
    ? `The figure is finer than the usual steps of ${shown(kind.step)} ${kind.unit}, as if copied from one data sheet.`
    : "An exact figure without a tolerance can be met by one product only; a range is usual.";
  return [{ first, last, concern: why, offered: offeredFor(stated) }];
}

const isBounded = (sentence: Sentence, count: () => void) =>
  placesOf(exactly, sentence, count).length === 0 && placesOf(bounds, sentence, count).length > 0;

/** Values of the recipe that are copied to a precision which points to one product. */
export const copiedPrecision: readonly LanguageRule[] = [
  {
    id: "copied-precision",
    family: "copied-precision",
    severity: "may shut others out",
    concern: "The figure points to one product.",
    basis: [legalBases.brandName, legalBases.performanceOrStandard, legalBases.makeOrSource],
    offered: "Give a range with a test method.",
    find: (sentence, { count }) => {
      const stated = statedValues(sentence, count);
      if (stated.length === 0) return [];
      const bounded = isBounded(sentence, count);
      return stated.flatMap((each) => findingOf(each, bounded));
    },
  },
];
