import Link from "next/link";
import {
  type CostConventions,
  comparisonRates,
  federalEnergyRate,
  fisherNominalRate,
  type Timing,
  withinFederalEnergyRate,
} from "#lib/cost";
import { listed } from "#lib/figure";
import { currencies, formatValue, measured } from "#lib/quantity";
import { capitalised } from "../../../../_components/in-words";
import styles from "./tables.module.css";

const timingWords: Readonly<Record<Timing, string>> = {
  "end-of-year": "Every payment falls at the end of its year. What is paid at the base date is not discounted.",
  "mid-year":
    "What recurs every year falls in the middle of its year, single payments at its end. What is paid at the base date is not discounted.",
};

const percent = (rate: number) => formatValue("fraction", measured("fraction", rate), "us");

function moneyRule({ money, inflation, realRate, nominalRate }: CostConventions) {
  const growth = "Where a price line says that a price grows, it grows over general inflation.";
  if (money === "constant" || inflation === null) {
    const text = `General inflation is left out of the prices and of the rate alike. ${growth}`;
    return { term: "Constant money", text, field: "money.money" };
  }
  const nominal = nominalRate?.asEntered ?? percent(fisherNominalRate(realRate.value, inflation.value));
  const text = `Payments carry general inflation of ${inflation.asEntered} a year from the base date, and the rate that discounts them carries the same: ${nominal} nominal, from (1 + real rate) × (1 + inflation) − 1. ${growth}`;
  return { term: "Current money", text, field: "money.money" };
}

/** The rate with where it comes from, and what the federal rule would make of it where it lies outside of its limits. */
function rateRule({ realRate, rateSource, rateTable }: CostConventions): string {
  const source =
    rateSource === "" ? "No document is named for it." : `It comes from: ${rateSource.trim().replace(/\.$/, "")}.`;
  const table =
    rateTable === null ? [] : [`It is read for the study period off the table: ${rateTable.asEntered.trim()}.`];
  const federal = withinFederalEnergyRate(realRate.value);
  const limits = [federalEnergyRate.least, federalEnergyRate.most].map(percent).join(" to ");
  const outside =
    federal === realRate.value
      ? []
      : [
          `For federal energy projects 10 CFR 436.14(a)(2) holds the real rate within ${limits}, which would make it ${percent(federal)}; that rule binds no school board.`,
        ];
  return [
    `${realRate.asEntered} a year over general inflation.`,
    ...table,
    source,
    ...outside,
    `The totals are shown at ${listed(comparisonRates.map(percent))} as well, because a rate is a choice.`,
  ].join(" ");
}

/** The rules by which every bid was costed, in words. */
export function ConventionsList({ project, conventions }: { project: string; conventions: CostConventions }) {
  const { baseDate, studyPeriod, serviceStart, timing, currency } = conventions;
  const years = studyPeriod.years;
  const rules: readonly Readonly<{ term: string; text: string; field: string | null }>[] = [
    {
      term: "Base date",
      text: `${baseDate}. All prices are in money of this day, and later payments are brought back to it.`,
      field: "money.baseDate",
    },
    { term: "Currency", text: `${capitalised(currencies[currency].label)}, ${currency}.`, field: "money.currency" },
    {
      term: "Start of service",
      text:
        serviceStart.years === 0
          ? "On the base date: lives and what recurs are counted from there."
          : `${serviceStart.asEntered} after the base date: lives and what recurs are counted from the start of service, the study from the base date.`,
      field: "money.serviceStart",
    },
    {
      term: "Study period",
      text: `${years} years from the base date, the same for every bid whatever the life of its parts.`,
      field: "money.studyPeriod",
    },
    {
      term: "Real rate",
      text: rateRule(conventions),
      field: "money.realRate",
    },
    moneyRule(conventions),
    { term: "When payments fall", text: timingWords[timing], field: "money.timing" },
    {
      term: "Residual value",
      text: `A part whose life goes on after year ${years} is credited with what was last paid for it × remaining life ÷ life, unless its line states another sum or none. Its removal is charged by the share of the life used up, in full, or not at all, as the line says.`,
      field: null,
    },
    {
      term: "Owner’s estimates",
      text: "What a bid leaves out or does not price is added by the owner on the page Levelling, so that all bids cover the same scope. It is marked as the owner’s estimate wherever it counts and is never shown as the bidder’s price. Where no figure stands in yet, the levelled cost is at least what it says.",
      field: null,
    },
    {
      term: "Left out",
      text: "Everything that no price line names, for instance money already spent, financing, income from hire, and the value of hours lost while a field is closed. What falls after the study period is left out but for residual values and shares of removal.",
      field: null,
    },
    {
      term: "Source",
      text: "Discounting and groups of cost as in 10 CFR 436.16; residual by remaining life and the band for small differences as in US GSA P100.",
      field: null,
    },
  ];
  return (
    <dl className={styles.conventions}>
      {rules.map(({ term, text, field }) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>
            {text}
            {field === null ? null : (
              <>
                {" "}
                <Link href={`/project/${project}/brief#${field}`} className="screen-only" prefetch={false}>
                  where entered<span className="visually-hidden">: {term}</span>
                </Link>
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
