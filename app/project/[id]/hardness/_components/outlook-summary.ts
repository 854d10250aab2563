import type { BidEvaluation } from "#lib/evaluation";

const listed = (letters: readonly string[]): string =>
  letters.length < 2 ? letters.join("") : `${letters.slice(0, -1).join(", ")} and ${letters.at(-1)}`;

const bidsNamed = (letters: readonly string[]): string => `${letters.length === 1 ? "bid" : "bids"} ${listed(letters)}`;

/** What the drawing shows, in one or two sentences: who could reach the limit first, and who can't be followed. */
export function outlookSummary(bids: readonly Pick<BidEvaluation, "letter" | "hardness">[]): string {
  const followed = bids.flatMap(({ letter, hardness: { outlook } }) =>
    outlook.kind === "outlook" ? [{ letter, outlook }] : [],
  );
  const others = bids.filter(({ hardness }) => hardness.outlook.kind === "unknown").map(({ letter }) => letter);
  const reached = followed
    .flatMap(({ letter, outlook: { firstYearPossiblyAbove: found } }) =>
      found.kind === "known" ? [{ letter, year: found.year }] : [],
    )
    .toSorted((one, other) => one.year - other.year);
  const [first] = reached;
  const atLimit =
    followed.length === 0
      ? "No bid gives a level that can be followed over the years."
      : first === undefined
        ? `By what is stated and assumed, ${bidsNamed(followed.map(({ letter }) => letter))} ${followed.length === 1 ? "stays" : "stay"} below the limit in every year looked at.`
        : `Bid ${first.letter} could reach the limit first, ${first.year === 0 ? "as new" : `in year ${first.year}`}.`;
  const missing =
    followed.length === 0 || others.length === 0
      ? ""
      : ` ${others.length === 1 ? "Bid" : "Bids"} ${listed(others)} can’t be followed and ${others.length === 1 ? "is" : "are"} not drawn.`;
  return `${atLimit}${missing}`;
}
