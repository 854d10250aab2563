import { describe, expect, test } from "vitest";
import { shownCents } from "#lib/cost";
import { evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import { ownersAdditions, ownersEstimates, tieWith } from "../../../app/project/[id]/cost/_components/cost-figures";
import { type PricedBid, pricedBids } from "../../../app/project/[id]/cost/_components/priced-bid";
import { bidLines, workedTerms } from "../../checks/cost-example";
import { workedProject } from "../../evaluation/worked-project";

const knownValue = (figure: Figure): number => {
  if (figure.kind !== "known") throw new Error(`expected a known figure, got ${figure.kind}`);
  return figure.value;
};
const dollars = (figure: Figure) => shownCents(knownValue(figure)) / 100;

function priced(lives: Readonly<Partial<Record<keyof typeof workedTerms, string>>> = {}) {
  const bids = workedProject.bids.map((bid) => {
    const letter = bid.letter.toLowerCase() as keyof typeof workedTerms;
    const terms = { ...workedTerms[letter], life: lives[letter] ?? workedTerms[letter].life };
    return { ...bid, prices: bidLines(terms) as ProjectFile["bids"][number]["prices"] };
  });
  const project = projectFileSchema.parse({ ...workedProject, bids });
  const found = pricedBids(project, evaluate(project));
  const named = (letter: string): PricedBid => {
    const one = found.find(({ bid }) => bid.letter === letter);
    if (one === undefined) throw new Error(`no priced bid ${letter}`);
    return one;
  };
  return { named, conventions: project.brief.money, found };
}

// The worked example of three invented bids, derived by discount factors as in 10 CFR 436.16.
describe("figures of the worked example", () => {
  const { named, conventions } = priced();

  test("the owner adds 22,700, 0 and 6,750 dollars at the base date", () => {
    expect(["A", "B", "C"].map((letter) => dollars(ownersAdditions(named(letter).bid)))).toEqual([22_700, 0, 6_750]);
  });

  // A: additions 22,700.00 and, of the printed present values, grooming 78,553.07, top-up 22,613.76, tests 17,109.10,
  // repairs 27,121.84, deep clean 19,299.31, removal 50,598.39 and 37,649.95
  test("275,645.42 dollars of bid A rest on the owner’s estimates", () => {
    expect(Math.abs(dollars(ownersEstimates(named("A").bid)) - 275_645.42)).toBeLessThanOrEqual(0.04);
  });

  test("B ties with A if its price falls by 100,093.59 dollars", () => {
    const tie = tieWith(named("A"), named("B"), conventions);
    expect(dollars(tie.fall)).toBe(100_093.59);
    expect(shownCents(tie.leaves)).toBe(79_200_000 - 10_009_359);
    expect((tie.share * 100).toFixed(2)).toBe("8.67");
  });

  test("with the lives offered A and B tie at a real rate of 8.5092 %, and A costs less above it", () => {
    const offered = priced({ a: "8 years", c: "12 years" });
    const { rates } = tieWith(offered.named("B"), offered.named("A"), conventions);
    if (rates.kind !== "at") throw new Error(`expected a rate, got ${rates.kind}`);
    expect(rates.rates.map((rate) => (knownValue(rate) * 100).toFixed(4))).toEqual(["8.5092"]);
    expect(rates.beyond).toBe("Above it bid A costs less.");
  });

  test("a fall in price is a bound where one cost is the least that it can be, and open where both are", () => {
    const open = (letter: string) => ({ ...named(letter), isLeast: true });
    expect(tieWith(named("A"), open("B"), conventions).fall.kind).toBe("at-least");
    expect(tieWith(open("A"), named("B"), conventions).fall.kind).toBe("at-most");
    expect(tieWith(open("A"), open("B"), conventions).fall.kind).toBe("unknown");
  });

  // by hand: at 0, 3 and 7 % A costs less than C by 349,815.00, 311,486.70 and 276,361.60 dollars
  test("no rate up to 15 % makes C cost as much as A at equal lives", () => {
    expect(tieWith(named("A"), named("C"), conventions).rates).toEqual({ kind: "nowhere" });
  });
});

test("a bid with nothing but owner’s estimates is not counted", () => {
  const [first, ...others] = workedProject.bids;
  if (first === undefined) throw new Error("no bid");
  const estimatesOnly = first.prices.filter(({ givenBy }) => givenBy === "owner-estimate");
  const project = projectFileSchema.parse({ ...workedProject, bids: [{ ...first, prices: estimatesOnly }, ...others] });
  expect(pricedBids(project, evaluate(project)).map(({ bid, index }) => [bid.letter, index])).toEqual([
    ["B", 1],
    ["C", 2],
  ]);
});
