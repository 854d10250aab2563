import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { matchMethod, methodOf } from "#lib/claim";
import { propertyYears, resetPrices } from "#lib/evaluation";
import { halfInchRule, type ImpactRequirement } from "#lib/impact";
import { formatInterval, formatValue, measured, type UnitSystem } from "#lib/quantity";
import { Caution } from "../../../_components/caution";
import { ChartFrame } from "../../../_components/chart/chart-frame";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { BidOutlook } from "./_components/bid-outlook";
import { ChancesSection } from "./_components/chances-section";
import { DepthLossTable } from "./_components/depth-loss-table";
import { FirstYearsTable } from "./_components/first-years-table";
import { OtherProperties } from "./_components/other-properties";
import { fullChart, narrowChart, OutlookChart } from "./_components/outlook-chart";
import { levelDomain } from "./_components/outlook-line";
import { outlookSummary } from "./_components/outlook-summary";
import { OutlookTable } from "./_components/outlook-table";
import { Premises } from "./_components/premises";
import { ResetsSection } from "./_components/resets-section";
import { SmallMultiples } from "./_components/small-multiples";

export const metadata: Metadata = { title: "Hardness outlook" };

/** The conditions of the rule of thumb, or the owner's own value where there is one. */
function RuleInWords({ choice, units }: { choice: ImpactRequirement["depthSensitivity"]; units: UnitSystem }) {
  const { depthLoss, factor, validFor } = halfInchRule;
  if (choice.kind === "owners-value")
    return (
      <p>
        The owner’s own sensitivity to depth loss is used: {choice.perDepth.asEntered}, because: {choice.reason}
      </p>
    );
  return (
    <p>
      A spot with {formatValue("length", depthLoss, units)} less infill is said to become{" "}
      {formatValue("fraction", measured("fraction", factor - 1), units)} harder. That is a rule of thumb:{" "}
      {halfInchRule.source}. It speaks of the flat missile, of infill that is mostly rubber without a shock layer, of
      levels of about {formatInterval("impactLevel", validFor.level, units)} as new and of losses up to{" "}
      {formatValue("length", validFor.largestLoss, units)}. It can be read in two ways, as growth by a constant share or
      by a constant amount; the ranges below span both. Frozen or soaked infill is another matter.
    </p>
  );
}

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
  const bids = evaluation.bids.flatMap((bid, index) => {
    const entered = project.bids.find((candidate) => candidate.id === bid.id);
    return entered === undefined ? [] : [{ entered, bid, index }];
  });
  const lines = bids.flatMap(({ bid: { letter, bidder, hardness }, index }) =>
    hardness.outlook.kind === "unknown"
      ? []
      : [{ letter, bidder, index, outlook: hardness.outlook, stated: hardness.stated }],
  );
  const domain = levelDomain(lines, impact);
  const { ownersDrift, targetWindow, limit, limitSource, horizonYears } = impact;
  return (
    <>
      <PageHead {...pageOf("hardness")} />
      <p>
        A higher level means a harder surface. Levels are by {methodOf(method).designation} and methods that drop the
        same missile from the same height; none other converts to it. Every test location has to stay below{" "}
        {limit.asEntered} ({limitSource}); the owner likes best {targetWindow.low.asEntered} to{" "}
        {targetWindow.high.asEntered}. Where a bid gives too few aged levels, the yearly change is the owner’s
        assumption: {ownersDrift.low.asEntered} to {ownersDrift.high.asEntered}, likely {ownersDrift.likely.asEntered}.{" "}
        <Link href={`/project/${id}/requirements`} className="screen-only">
          Change these in the requirements
        </Link>
      </p>
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <h2>All bids over the years</h2>
      {lines.length === 0 ? (
        <p>{outlookSummary(evaluation.bids, units)}</p>
      ) : (
        <>
          <ChartFrame
            title="Impact level by year"
            summary={outlookSummary(evaluation.bids, units)}
            draw={(width) => (
              <OutlookChart
                id={`plot-all-${width}`}
                label="Impact level of each bid by year, as summed up above and listed in the table below"
                lines={lines}
                requirement={impact}
                domain={domain}
                size={width === "wide" ? fullChart : narrowChart}
                units={units}
              />
            )}
            table={<OutlookTable lines={lines} horizon={horizonYears} units={units} />}
          />
          <p className="small soft">
            Lines are the likely level, bands reach from the low to the high side. Thin dotted lines and pale bands are
            extrapolated: no level in the bid backs them. Marks are levels that the bid states; an arrow shows the side
            that a bound such as “at most” leaves open. Where a bid states nothing else, its line is that bound.
          </p>
        </>
      )}
      <Premises bids={bids} method={method} horizon={horizonYears} />
      <SmallMultiples lines={lines} requirement={impact} domain={domain} units={units} />
      {lines.length === 0 ? null : (
        <>
          <h2>When a bid could leave the limits</h2>
          <FirstYearsTable lines={lines} units={units} />
        </>
      )}
      <ResetsSection
        project={id}
        resets={resetPrices(project)}
        bids={bids.map(({ bid: { id: bid, letter, bidder }, index }) => ({ id: bid, letter, bidder, index }))}
        currency={project.brief.money.currency}
      />
      <ChancesSection bids={bids} requirement={impact} />
      <h2>Bid by bid</h2>
      {bids.map((read) => (
        <BidOutlook
          key={read.bid.id}
          project={id}
          read={read}
          method={method}
          requirement={impact}
          hoursPerYear={project.brief.use.hoursPerYear.value}
          units={units}
        />
      ))}
      <OtherProperties followed={propertyYears(project)} bids={bids} horizon={horizonYears} units={units} />
      <h2>Where infill moves away</h2>
      <RuleInWords choice={impact.depthSensitivity} units={units} />
      <DepthLossTable bids={bids} limit={limit.value} units={units} />
    </>
  );
}
