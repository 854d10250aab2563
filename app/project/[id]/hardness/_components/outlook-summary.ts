import { type BidEvaluation, bidsInWords } from "#lib/evaluation";
import type { HardnessOutlook } from "#lib/impact";
import { formatValue, type UnitSystem } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";

type Outlook = Extract<HardnessOutlook, { kind: "outlook" }>;
type Followed = Readonly<{ letter: string; outlook: Outlook }>;
type SummedUp = Readonly<{ letter: string; hardness: Pick<BidEvaluation["hardness"], "outlook"> }>;

const possibleYear = ({ outlook: { firstYearPossiblyAbove: found } }: Followed): number =>
  found.kind === "known" ? found.year : Number.POSITIVE_INFINITY;

const inYear = (year: number): string => (year === 0 ? "as new" : `in year ${year}`);

/** What the likely level of the bids that could be first does, where it is one bid. */
function likelyToo(first: readonly Followed[]): string {
  const [only, ...rest] = first;
  if (only === undefined || rest.length > 0) return "";
  const { firstYearLikelyAbove: likely } = only.outlook;
  switch (likely.kind) {
    case "known":
      return `; its likely level gets there ${inYear(likely.year)}`;
    case "not-within-horizon":
      return `; its likely level stays below through year ${likely.horizon}`;
    case "open-side":
      return "";
  }
}

function atTheLimit(followed: readonly Followed[], units: UnitSystem): readonly string[] {
  const [any] = followed;
  if (any === undefined) return [];
  const limit = `the limit of ${formatValue("impactLevel", any.outlook.limit, units)}`;
  const earliest = Math.min(...followed.map(possibleYear));
  if (Number.isFinite(earliest)) {
    const first = followed.filter((bid) => possibleYear(bid) === earliest);
    const who = capitalised(bidsInWords(first.map(({ letter }) => letter)));
    return [`${who} could reach ${limit} first, ${inYear(earliest)} on the hard side of the range${likelyToo(first)}.`];
  }
  const who = capitalised(bidsInWords(followed.map(({ letter }) => letter)));
  const horizon = any.outlook.years.length - 1;
  return [
    `${who} ${followed.length === 1 ? "stays" : "stay"} below ${limit} through year ${horizon}, on the hard side of the range too.`,
  ];
}

const sentenceIfAny = (letters: readonly string[], sentence: (who: string) => string): readonly string[] =>
  letters.length === 0 ? [] : [sentence(bidsInWords(letters))];

/** What the drawing shows, in words: who could reach the limit first, what is assumed, and who can't be followed. */
export function outlookSummary(bids: readonly SummedUp[], units: UnitSystem): string {
  const followed = bids.flatMap(({ letter, hardness: { outlook } }) =>
    outlook.kind === "outlook" ? [{ letter, outlook }] : [],
  );
  const lettersOf = (some: readonly Readonly<{ letter: string }>[]) => some.map(({ letter }) => letter);
  const assumed = lettersOf(followed.filter(({ outlook }) => outlook.premise === "owner-scenario"));
  const others = lettersOf(bids.filter(({ hardness }) => hardness.outlook.kind === "unknown"));
  const isOpen = ({ outlook }: Followed) => outlook.firstYearPossiblyAbove.kind === "open-side";
  if (followed.length === 0)
    return "No bid gives a level by the required method, so none can be followed over the years.";
  return [
    ...atTheLimit(
      followed.filter((bid) => !isOpen(bid)),
      units,
    ),
    ...sentenceIfAny(
      lettersOf(followed.filter(isOpen)),
      (who) => `How hard ${who} may become is not stated: a level says “at least” only.`,
    ),
    ...sentenceIfAny(assumed, (who) => `The yearly change of ${who} is the owner’s assumption.`),
    ...sentenceIfAny(
      others,
      (who) => `${capitalised(who)} can’t be followed and ${others.length === 1 ? "is" : "are"} not drawn.`,
    ),
  ].join(" ");
}
