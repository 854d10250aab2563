/** When savings have paid back what more was spent first. Years from the base date; a part of a year counts evenly. */
export type Payback = Readonly<
  /** Nothing more is spent first. */
  | { kind: "at-once" }
  /** `stays` is false where a later payment takes the sum of savings below nothing again. */
  | { kind: "after"; years: number; stays: boolean }
  | { kind: "not-within-study" }
>;

/** Sums below this are the last bits of binary arithmetic, in cents. */
const negligible = 1e-6;

/**
 * When the savings of each year, discounted at `rate`, have made up for what more is spent at the base date. At a rate of
 * 0 it is the simple payback. Within the year in which they do, the year's saving is spread evenly and discounted.
 * @param savings what is saved in each year, in cents; index 0 is the base date and below zero where more is spent
 * @throws RangeError if the rate is not above −1
 * @source derived; for equal yearly savings A on an extra first cost K it is −ln(1 − rate × K ÷ A) ÷ ln(1 + rate)
 */
export function payback(savings: readonly number[], rate: number): Payback {
  if (!(rate > -1)) throw new RangeError(`a rate above −100 % is needed, got ${rate * 100} %`);
  let owed = -(savings[0] ?? 0);
  if (owed <= negligible) return { kind: "at-once" };
  for (let year = 1; year < savings.length; year += 1) {
    const saved = savings[year] ?? 0;
    const worth = saved * (1 + rate) ** -year;
    if (owed - worth <= negligible) {
      const years = year - 1 + partOfYear(owed, saved, rate, year);
      return { kind: "after", years, stays: staysPaid(savings, rate, year, owed - worth) };
    }
    owed -= worth;
  }
  return { kind: "not-within-study" };
}

/** The part of a year that it takes for its saving, spread evenly, to be worth what is still owed. */
function partOfYear(owed: number, saved: number, rate: number, year: number): number {
  const atItsStart = (owed * (1 + rate) ** (year - 1)) / saved;
  return Math.min(1, rate === 0 ? atItsStart : -Math.log1p(-rate * atItsStart) / Math.log1p(rate));
}

function staysPaid(savings: readonly number[], rate: number, paidIn: number, owedThen: number): boolean {
  let owed = owedThen;
  return savings.slice(paidIn + 1).every((saved, index) => {
    owed -= saved * (1 + rate) ** -(paidIn + 1 + index);
    return owed <= negligible;
  });
}
