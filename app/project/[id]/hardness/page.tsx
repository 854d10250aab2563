import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { matchMethod, methodOf } from "#lib/claim";
import { Caution } from "../../../_components/caution";
import { ChartFrame } from "../../../_components/chart/chart-frame";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BidOutlook } from "./_components/bid-outlook";
import { DepthLossTable } from "./_components/depth-loss-table";
import { OutlookChart, type OutlookLine } from "./_components/outlook-chart";
import { outlookSummary } from "./_components/outlook-summary";
import { OutlookTable } from "./_components/outlook-table";

export const metadata: Metadata = { title: "Hardness outlook" };

export default async function HardnessPage({ params }: PageProps<"/project/[id]/hardness">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadEvaluation(id), readersUnits()]);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const { impact } = project.requirements;
  const method = matchMethod(impact.method);
  if (method === null || method === "not-stated") throw new Error(`no test method ${impact.method}`);
  if (evaluation.bids.length === 0) {
    return (
      <>
        <PageHead {...pageOf("hardness")} />
        <p>
          No bid has been entered. <Link href={`/project/${id}/bids`}>Enter the bids</Link> with their impact levels: as
          new and, where a bid gives them, after years of use.
        </p>
      </>
    );
  }
  const lines = evaluation.bids.flatMap(({ letter, hardness: { outlook, stated } }, index): readonly OutlookLine[] =>
    outlook.kind === "unknown"
      ? []
      : [{ letter, index, outlook, stated: stated.map(({ years, level }) => ({ years, level: middleOf(level) })) }],
  );
  const shown = evaluation.bids.map((bid, index) => ({ bid, index }));
  return (
    <>
      <PageHead {...pageOf("hardness")} />
      <p>
        Levels by {methodOf(method).designation} and methods that drop the same missile from the same height. The
        owner’s limit is {impact.limit.asEntered} ({impact.limitSource}). Where a bid gives too few aged levels, the
        yearly change is the owner’s assumption: {impact.ownersDrift.low.asEntered} to{" "}
        {impact.ownersDrift.high.asEntered}, likely {impact.ownersDrift.likely.asEntered}.
      </p>
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <h2>All bids over the years</h2>
      <ChartFrame
        title="Impact level by year"
        summary={outlookSummary(evaluation.bids)}
        table={<OutlookTable lines={lines} horizon={impact.horizonYears} units={units} />}
      >
        <OutlookChart lines={lines} requirement={impact} />
      </ChartFrame>
      <p className="small soft">
        Lines are the likely level, thin where no level in the bid backs them; bands reach from the low to the high
        side; rings are levels that the bid states.
      </p>
      <h2>Bid by bid</h2>
      {shown.map(({ bid, index }) => {
        const entered = project.bids[index];
        return entered === undefined ? null : (
          <BidOutlook
            key={bid.id}
            project={id}
            bid={entered}
            evaluated={bid}
            index={index}
            method={method}
            units={units}
          />
        );
      })}
      <h2>Where infill moves away</h2>
      <p>
        Half an inch of infill less is said to make a spot 42 % harder. That is a rule of thumb: common practice, no
        source. It speaks of rubber infill without a shock layer, of levels of about 90 to 150 g as new and of losses up
        to three quarters of an inch. The ranges below span its two readings.
      </p>
      <DepthLossTable bids={shown} units={units} />
    </>
  );
}

/** The one height at which to draw a level that may be a range or a bound. */
function middleOf({ low, high }: { low: number; high: number }): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2;
  return Number.isFinite(low) ? low : high;
}
