import { z } from "zod";
import { type CurrencyCode, currencyCodes, type ExactQuantity, measured, plainDateField } from "#lib/quantity";
import type { CostConventions, RateTable } from "./model";
import { fisherRateWithout } from "./nominal-rate";
import { parseInflation, parseNominalRate, parseRealRate } from "./parse-rate";
import { parseYears } from "./parse-years";
import { parseRateTable, rateForTerm } from "./rate-table";
import { mayLack, optional, read, remark, years } from "./text-fields";

const percent = (share: number) => `${Number((share * 100).toPrecision(12))} %`.replace("-", "−");

const inWords = (asEntered: string, value: number): ExactQuantity<"fraction"> => ({
  ...{ dimension: "fraction", unit: "%", asEntered },
  value: measured("fraction", value),
});

/** The real rate that a nominal rate holds beside inflation, with the words for how it came about. */
function realRateFrom(
  nominal: ExactQuantity<"fraction">,
  inflation: ExactQuantity<"fraction">,
): ExactQuantity<"fraction"> {
  const rate = fisherRateWithout(nominal.value, inflation.value);
  const asEntered = `${percent(Number(rate.toPrecision(6)))} (from ${nominal.asEntered} nominal and ${inflation.asEntered} inflation)`;
  return inWords(asEntered, rate);
}

/** The real rate that a table has for the study, with the entries it comes from. */
function realRateOf(table: RateTable, studyYears: number): ExactQuantity<"fraction"> {
  const { rate, between } = rateForTerm(table, studyYears);
  const entries = between.map((entry) => `${entry.rate.asEntered} for ${entry.years} years`);
  const from = entries.length === 1 ? `the table’s ${entries[0]}` : `between ${entries.join(" and ")}`;
  return inWords(`${percent(Number(rate.toPrecision(6)))} (${from})`, rate);
}

/**
 * How a project costs its bids, from text. Exactly one rate is given: real, nominal or by a table of real rates, which is
 * read for the study period. Between real and nominal Fisher's identity stands, so that constant money never meets a
 * nominal rate nor current money a real one.
 */
export const costConventionsSchema = z
  .strictObject({
    currency: z.enum(currencyCodes as [CurrencyCode, ...CurrencyCode[]], {
      error: ({ input }) =>
        `“${String(input).slice(0, 40)}” was read for the currency; expected one of the codes ${currencyCodes.join(", ")}.`,
    }),
    baseDate: plainDateField,
    /** Absent in files from before service could start later than the base date. */
    serviceStart: z
      .string()
      .max(200, "Expected at most 200 characters.")
      .default("0 years")
      .transform((text) => (text.trim() === "" ? "0 years" : text))
      .transform(read((asEntered) => parseYears(asEntered, { what: "the start of service", low: 0, high: 20 }))),
    studyPeriod: years({ what: "the study period", low: 1, high: 60 }),
    /** Empty where a nominal rate is written. */
    realRate: mayLack(parseRealRate, "Write the real rate per year, for example “3 %”."),
    nominalRate: optional(parseNominalRate),
    /** Both absent in files from before a rate could come from a published table. */
    rateTable: optional(parseRateTable, 2000),
    rateSource: remark(300),
    inflation: optional(parseInflation),
    timing: z.enum(["end-of-year", "mid-year"], {
      error: "Choose end-of-year or mid-year for what recurs every year.",
    }),
    money: z.enum(["constant", "current"], {
      error: "Choose constant money, without inflation, or current money, with inflation in it.",
    }),
  })
  .transform(({ realRate, nominalRate, rateTable, ...rest }, context): CostConventions => {
    const issue = (field: string, message: string) => context.addIssue({ code: "custom", path: [field], message });
    const { inflation, serviceStart, studyPeriod, money } = rest;
    if (serviceStart.years >= studyPeriod.years) {
      issue(
        "serviceStart",
        `Service starts ${serviceStart.years} years after the base date and the study ends after ${studyPeriod.years}; expected at least one year of service.`,
      );
    }
    if (inflation === null && money === "current") {
      issue("inflation", "Current money carries general inflation; write it, for example “2.5 %”.");
      return z.NEVER;
    }
    if (realRate !== null && nominalRate !== null) {
      issue(
        "nominalRate",
        "A real and a nominal rate are both written; expected one of them, the other follows from inflation.",
      );
      return z.NEVER;
    }
    if (rateTable !== null && (realRate !== null || nominalRate !== null)) {
      issue("rateTable", "A rate is written as well as a table of rates; expected one of them.");
      return z.NEVER;
    }
    const given = rateTable === null ? realRate : realRateOf(rateTable, studyPeriod.years);
    if (nominalRate === null) {
      if (given !== null) return { ...rest, realRate: given, nominalRate, rateTable };
      issue("realRate", "Write the real rate per year, for example “3 %”.");
      return z.NEVER;
    }
    if (inflation === null) {
      issue("inflation", "A nominal rate holds general inflation; write the inflation, for example “2.5 %”.");
      return z.NEVER;
    }
    return { ...rest, realRate: realRateFrom(nominalRate, inflation), nominalRate, rateTable };
  });
