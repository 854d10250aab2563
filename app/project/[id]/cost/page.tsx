import Link from "next/link";
import { notFound } from "next/navigation";
import { studyYearsOf } from "#lib/cost";
import { lackingSentences } from "#lib/document";
import { type BidEvaluation, bidsInWords } from "#lib/evaluation";
import { ChartFrame } from "../../../_components/chart/chart-frame";
import { capitalised } from "../../../_components/in-words";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BreakEvenTable } from "./_components/break-even-table";
import { barsSummary, linesSummary, paymentsSummary } from "./_components/chart-summaries";
import { CategoryTable, PaymentsTable, RunningTotalTable } from "./_components/chart-tables";
import { CostBars } from "./_components/cost-bars";
import { CostByYear } from "./_components/cost-by-year";
import { CostPages } from "./_components/cost-pages";
import { costSentences } from "./_components/cost-sentences";
import { PaymentsByYear } from "./_components/payments-by-year";
import { PriceLines } from "./_components/price-lines";
import { pricedArea, pricedBids } from "./_components/priced-bid";
import { TotalsTable } from "./_components/totals-table";
import { TryRate } from "./_components/try-rate";
import { YearlyFlows } from "./_components/yearly-flows";

export const metadata = { title: "Life-cycle cost" };

export default async function CostPage({ params, searchParams }: PageProps<"/project/[id]/cost">) {
  const { id } = await params;
  const { rate } = await searchParams;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const units = await readersUnits();
  const conventions = project.brief.money;
  const { currency } = conventions;
  const years = conventions.studyPeriod.years;
  const bids = pricedBids(project, evaluation);
  const costed = bids.map(({ bid, ...costs }) => ({ letter: bid.letter, ...costs }));
  const [cheapest, ...others] = bids.toSorted((one, other) => one.presentValue - other.presentValue);
  return (
    <>
      <PageHead {...pageOf("cost")} />
      <CostPages project={id} here="totals" />
      {costSentences(costed, { studyYears: years, currency }).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {bids
        .flatMap(({ bid }) => lackingSentences(bid))
        .map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      <UnpricedBids project={id} all={evaluation.bids} priced={bids.length} />
      {cheapest === undefined ? null : (
        <>
          <SameRequirements project={id} bids={bids.map(({ bid }) => bid)} />

          <h2>Totals</h2>
          <TotalsTable project={id} bids={bids} units={units} conventions={conventions} />
          <p className="screen-only">
            <a href={`/project/${id}/audit-workbook`} className="button" download>
              Audit workbook (XLSX) with live formulas
            </a>
          </p>

          <TryRate bids={bids} conventions={conventions} typed={typeof rate === "string" ? rate : null} />

          <h2>What the money is spent on</h2>
          <ChartFrame
            title="Present value by category"
            summary={barsSummary(bids, currency)}
            draw={(size) => <CostBars bids={bids} currency={currency} size={size} />}
            table={<CategoryTable bids={bids} currency={currency} />}
          />

          <h2>When it is paid</h2>
          <ChartFrame
            title="Payments, year by year"
            summary={paymentsSummary(bids, currency)}
            draw={(size) => <PaymentsByYear bids={bids} years={years} currency={currency} size={size} />}
            table={<PaymentsTable bids={bids} currency={currency} />}
          />
          <ChartFrame
            title="Cost so far, year by year"
            summary={linesSummary(bids, years, currency)}
            draw={(size) => <CostByYear bids={bids} years={years} currency={currency} size={size} />}
            table={<RunningTotalTable bids={bids} currency={currency} />}
          />
          {bids.map((priced) => (
            <YearlyFlows key={priced.bid.id} priced={priced} currency={currency} />
          ))}

          <h2>Every price line</h2>
          <p>
            Each line as it was entered, who stands behind it, and what it is worth at the base date. The name of a line
            leads to where it was entered.
          </p>
          {bids.map((priced) => (
            <PriceLines
              key={priced.bid.id}
              priced={priced}
              setting={{ project: id, area: pricedArea(evaluation), years: studyYearsOf(conventions), currency }}
            />
          ))}

          {others.length === 0 ? null : (
            <>
              <h2>Break-even</h2>
              <p>
                What would have to change for another bid to cost as much as bid {cheapest.bid.letter}, one thing at a
                time and all else staying as priced. A small change means that the order is not firm.
                {bids.some(({ isLeast }) => isLeast)
                  ? " A bid with an item that has no figure yet counts here with the least that it costs."
                  : null}
              </p>
              <BreakEvenTable
                cheapest={cheapest}
                others={others}
                conventions={conventions}
                shown={{ project: id, units, currency }}
              />
            </>
          )}
        </>
      )}
    </>
  );
}

/** Says which bids have no prices yet and where to enter them. */
function UnpricedBids({ project, all, priced }: { project: string; all: readonly BidEvaluation[]; priced: number }) {
  if (all.length === 0)
    return (
      <p>
        No bid has been entered yet. <Link href={`/project/${project}/bids`}>Enter a bid and its prices</Link>; this
        page then shows what it costs over the whole study period.
      </p>
    );
  const unpriced = all.filter(({ cost }) => cost.presentValue.kind === "unknown");
  if (unpriced.length === 0) return null;
  return (
    <>
      {priced > 0 ? null : (
        <p>
          No bid has a price of its own yet. Enter the prices of each bid with the year in which they fall due; this
          page then shows what each bid costs over the whole study period.
        </p>
      )}
      <ul>
        {unpriced.map(({ id, letter, bidder }) => (
          <li key={id}>
            Bid {letter}, {bidder}, has no price of its own and is not counted here.{" "}
            <Link href={`/project/${project}/bids/${id}`}>Enter its prices</Link>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Costs compare only between bids that meet the same requirements. */
function SameRequirements({ project, bids }: { project: string; bids: readonly BidEvaluation[] }) {
  const failing = bids.filter(({ score }) => score.standing === "fails a gate").map(({ letter }) => letter);
  const open = bids.filter(({ score }) => score.standing === "gate open").map(({ letter }) => letter);
  return (
    <p>
      Costs compare only between bids that meet the same requirements.
      {failing.length === 0
        ? null
        : ` ${capitalised(bidsInWords(failing))} ${failing.length === 1 ? "fails" : "fail"} a gate.`}
      {open.length === 0 ? null : ` For ${bidsInWords(open)} a gate is still open.`}{" "}
      <Link href={`/project/${project}/evaluation`}>See the gates</Link>
    </p>
  );
}
