import type { AgainstBase, ComparedWith, LifeCycleCost, Payback } from "#lib/cost";
import type { Evaluation } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { RowHead } from "../../../../../_components/bid-columns";
import columns from "../../../../../_components/bid-columns.module.css";
import { BidLetter } from "../../../../../_components/bid-letter";
import { FigureText } from "../../../../../_components/figure-text";
import { capitalised } from "../../../../../_components/in-words";
import { Scroller } from "../../../../../_components/scroller";
import styles from "../../_components/tables.module.css";

type Costs = Pick<LifeCycleCost, "presentValue" | "equivalentAnnualCost" | "perHour">;

/** What each costs, for what the owner compares with as for the bids. */
const costs: readonly Readonly<{ label: string; note: string; figure: (of: Costs) => Figure }>[] = [
  { label: "Present value", note: "All payments of the study", figure: ({ presentValue }) => presentValue },
  {
    label: "Equivalent annual cost",
    note: "The equal yearly cost that is worth the same",
    figure: ({ equivalentAnnualCost }) => equivalentAnnualCost,
  },
  { label: "Per hour of use", note: "Each at the hours it is reckoned with", figure: ({ perHour }) => perHour },
];

const measures: readonly Readonly<{ label: string; note: string; figure: (against: AgainstBase) => Figure }>[] = [
  {
    label: "Net savings",
    note: "What the base costs over the study less what the bid costs",
    figure: ({ netSavings }) => netSavings,
  },
  {
    label: "Savings-to-investment ratio",
    note: "Savings in later years for each unit of money paid more at the start",
    figure: ({ savingsToInvestment }) => savingsToInvestment,
  },
  {
    label: "Adjusted rate of return",
    note: "A year, with savings put out at the rate of the study",
    figure: ({ adjustedRateOfReturn }) => adjustedRateOfReturn,
  },
];

const paybacks: readonly Readonly<{ label: string; note: string; of: (against: AgainstBase) => Payback }>[] = [
  { label: "Simple payback", note: "Until savings make up for the higher price", of: (one) => one.simplePayback },
  { label: "Discounted payback", note: "The same at the rate of the study", of: (one) => one.discountedPayback },
];

function paybackWords(payback: Payback): string {
  switch (payback.kind) {
    case "at-once":
      return "nothing to pay back";
    case "after":
      return `${Number(payback.years.toFixed(1))} years${payback.stays ? "" : ", not for good"}`;
    case "not-within-study":
      return "not within the study";
  }
}

/** Costs, payback, savings and returns of each bid beside what the owner compares with, as last saved. */
export function Comparisons({
  project,
  evaluation: { bids, baseAlternative },
  with: compared,
  units,
}: {
  project: string;
  evaluation: Evaluation;
  with: ComparedWith;
  units: UnitSystem;
}) {
  const shown = bids.flatMap(({ id, letter, bidder, cost }, index) =>
    cost.against === null ? [] : [{ id, letter, bidder, index, cost, against: cost.against }],
  );
  const base: Costs | null | undefined =
    compared.kind === "bid" ? bids.find(({ id }) => id === compared.bid)?.cost : baseAlternative;
  const [first] = shown;
  if (first === undefined || base === null || base === undefined) return null;
  const name = first.against.base;
  return (
    <section aria-labelledby="comparison">
      <h2 id="comparison">Against {name}, as last saved</h2>
      <Scroller label={`Each bid against ${name}, table`}>
        <table className={styles.wide}>
          <caption className="visually-hidden">Each bid against {name}</caption>
          <thead>
            <tr>
              <th scope="col" className={columns.first}>
                Measure
              </th>
              <th scope="col" className={columns.bid}>
                {capitalised(name)}
              </th>
              {shown.map(({ id, letter, index, bidder }) => (
                <th key={id} scope="col" className={columns.bid}>
                  <BidLetter letter={letter} index={index} /> <span className={columns.bidder}>{bidder}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {costs.map(({ label, note, figure }) => (
              <tr key={label}>
                <Head label={label} note={note} />
                <td>
                  <FigureText project={project} of={`${label}, ${name}`} figure={figure(base)} units={units} />
                </td>
                {shown.map(({ id, letter, cost }) => (
                  <td key={id}>
                    <FigureText project={project} of={`${label}, bid ${letter}`} figure={figure(cost)} units={units} />
                  </td>
                ))}
              </tr>
            ))}
            {measures.map(({ label, note, figure }) => (
              <tr key={label}>
                <Head label={label} note={note} />
                <td />
                {shown.map(({ id, letter, against }) => (
                  <td key={id}>
                    <FigureText
                      project={project}
                      of={`${label}, bid ${letter}`}
                      figure={figure(against)}
                      units={units}
                    />
                  </td>
                ))}
              </tr>
            ))}
            {paybacks.map(({ label, note, of }) => (
              <tr key={label}>
                <Head label={label} note={note} />
                <td />
                {shown.map(({ id, against }) => (
                  <td key={id}>{paybackWords(of(against))}</td>
                ))}
              </tr>
            ))}
            <tr>
              <RowHead>In words</RowHead>
              <td />
              {shown.map(({ id, against }) => (
                <td key={id}>
                  {against.sentences.map((sentence) => (
                    <p key={sentence} className={styles.note}>
                      {sentence}
                    </p>
                  ))}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </Scroller>
    </section>
  );
}

const Head = ({ label, note }: { label: string; note: string }) => (
  <RowHead>
    {label}
    <p className={styles.note}>{note}</p>
  </RowHead>
);
