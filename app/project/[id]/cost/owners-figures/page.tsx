import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { AgainstBase, LinkRow } from "#lib/cost";
import type { CostingText, Evaluation } from "#lib/evaluation";
import type { Figure } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { BidColumns, RowHead } from "../../../../_components/bid-columns";
import { FigureText } from "../../../../_components/figure-text";
import { PageHead } from "../../../../_components/page-head";
import { Scroller } from "../../../../_components/scroller";
import { costingStart } from "../../../../_data/costing-start";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { CostPages } from "../_components/cost-pages";
import styles from "../_components/tables.module.css";
import { OwnersForm } from "./_components/owners-form";
import { filledOwners } from "./_components/owners-values";

export const metadata: Metadata = { title: "Owner’s figures" };

export default async function OwnersFiguresPage({ params }: PageProps<"/project/[id]/cost/owners-figures">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { documents, evaluation } = loaded;
  const units = await readersUnits();
  const bids = evaluation.bids.map(({ id: bid, letter, cost }) => ({
    id: bid,
    letter,
    now: Object.fromEntries(cost.links.map((row) => [row.link, nowInWords(row)])),
  }));
  const filled = (costing: CostingText) => filledOwners(costing, bids);
  return (
    <>
      <PageHead
        title="Owner’s figures"
        decide="What the owner adds to the bidders’ prices from technical figures, and what the bids are compared with."
      />
      <CostPages project={id} here="owners-figures" />
      {bids.length === 0 ? (
        <p>
          There are no bids yet. <Link href={`/project/${id}/bids`}>Add the bids first</Link>.
        </p>
      ) : (
        <>
          <OwnersForm start={await costingStart(id, documents.costing, filled)} bids={bids} />
          <Comparisons project={id} evaluation={evaluation} units={units} />
        </>
      )}
    </>
  );
}

/** What a link does in a bid now, as last saved. */
function nowInWords(row: LinkRow): string {
  switch (row.kind) {
    case "off":
      return row.note;
    case "computed":
      return `Counted as worked out. ${row.note}`.trim();
    case "stated":
      return `Counted as stated. ${row.note}`.trim();
    case "not-counted":
      return `Not counted. ${row.because}`;
  }
}

/** Payback, savings and returns of each bid against what the owner compares with, as last saved. */
function Comparisons({ project, evaluation, units }: { project: string; evaluation: Evaluation; units: UnitSystem }) {
  const compared = evaluation.bids.flatMap(({ id, letter, bidder, cost: { against } }, index) =>
    against === null ? [] : [{ id, letter, bidder, index, against }],
  );
  const [first] = compared;
  if (first === undefined) return null;
  return (
    <section aria-labelledby="comparison">
      <h2 id="comparison">Against {first.against.base}, as last saved</h2>
      <Scroller label="Payback and savings of all bids">
        <table className={styles.wide}>
          <caption className="visually-hidden">Each bid against {first.against.base}</caption>
          <BidColumns corner="Measure" bids={compared} />
          <tbody>
            {measures.map(({ label, note, figure }) => (
              <tr key={label}>
                <RowHead>
                  {label}
                  <p className={styles.note}>{note}</p>
                </RowHead>
                {compared.map(({ id, letter, against }) => (
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
            <tr>
              <RowHead>In words</RowHead>
              {compared.map(({ id, against }) => (
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
