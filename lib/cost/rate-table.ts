import { failed, type Result, succeeded } from "#lib/quantity";
import type { RateTable, TermRate } from "./model";
import { parseRealRate } from "./parse-rate";
import { parseYears } from "./parse-years";

/** The rate of a table for a term, with the entry or the two entries that it comes from. */
export type RateForTerm = Readonly<{ rate: number; between: readonly [TermRate] | readonly [TermRate, TermRate] }>;

/**
 * The rate for a term: on the straight line between the two terms around it, beyond the longest term its rate.
 * Under the shortest term its rate stands too; common practice, no source.
 * @source OMB Circular A-94, Appendix C: straight lines between maturities, the 30-year rate for longer programs
 */
export function rateForTerm({ rates }: RateTable, years: number): RateForTerm {
  const above = rates.find((entry) => entry.years >= years);
  const below = rates.findLast((entry) => entry.years <= years);
  if (above === undefined || below === undefined || above === below) {
    const [only] = [above ?? below ?? rates[0]];
    return { rate: only.rate.value, between: [only] };
  }
  const share = (years - below.years) / (above.years - below.years);
  const rate = below.rate.value + share * (above.rate.value - below.rate.value);
  return { rate, between: [below, above] };
}

const entryPattern = /^(\d{1,3})[\s-]*(?:years?|yrs?\.?|y)?\s*[:=]?\s+(\S.*)$/i;
const mostTerms = 40;
const expected = "expected terms with their rates, for example “5 years 1.9 %, 10 years 2.0 %, 30 years 2.3 %”";

/** "5 years 1.9 %, 10 years 2.0 %" → the table, or the sentence that helps. */
export function parseRateTable(asEntered: string): Result<RateTable, string> {
  const rates: TermRate[] = [];
  for (const part of asEntered.split(/[,;\n]/).filter((piece) => piece.trim() !== "")) {
    const [, term, written] = entryPattern.exec(part.trim()) ?? [];
    if (term === undefined || written === undefined)
      return failed(`“${part.trim()}” was read in the table of rates; ${expected}.`);
    const years = parseYears(term, { what: "a term of the table of rates", low: 1, high: 100 });
    if (!years.ok) return years;
    const rate = parseRealRate(written);
    if (!rate.ok) return rate;
    if (years.value.years <= (rates.at(-1)?.years ?? 0))
      return failed(`“${part.trim()}” follows a term as long or longer; expected the shortest term first, each once.`);
    rates.push({ years: years.value.years, rate: rate.value });
  }
  const [first, ...others] = rates;
  if (first === undefined) return failed(`“${asEntered}” was read for the table of rates; ${expected}.`);
  return rates.length > mostTerms
    ? failed(`The table has ${rates.length} terms; expected at most ${mostTerms}.`)
    : succeeded({ asEntered, rates: [first, ...others] });
}

/**
 * The limits that hold a real rate of federal energy projects in the United States. They bind no school board.
 * @source 10 CFR 436.14(a)(2)
 */
export const federalEnergyRate = { least: 0.03, most: 0.1 } as const;

/** What the federal rule would make of a real rate. */
export const withinFederalEnergyRate = (rate: number): number =>
  Math.min(federalEnergyRate.most, Math.max(federalEnergyRate.least, rate));
