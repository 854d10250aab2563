import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { costBridge } from "#lib/cost";
import { lackingSentences } from "#lib/document";
import { ChartFrame } from "../../../../_components/chart/chart-frame";
import { PageHead } from "../../../../_components/page-head";
import { loadEvaluation } from "../../../../_data/load-project";
import { TwoBidsForm } from "../../_components/two-bids-form";
import { CostPages } from "../_components/cost-pages";
import { pricedArea, pricedBids } from "../_components/priced-bid";
import { BridgeChart } from "./_components/bridge-chart";
import { BridgeTable } from "./_components/bridge-table";
import { bridgeWords } from "./_components/bridge-words";
import { chosenPair } from "./_components/chosen-pair";
import { TiesSection } from "./_components/ties-section";

const textOf = (asked: string | readonly string[] | undefined): string => (typeof asked === "string" ? asked : "");

export const metadata: Metadata = { title: "Two bids by cost" };

export default async function TwoBidsPage({ params, searchParams }: PageProps<"/project/[id]/cost/two-bids">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const { currency } = project.brief.money;
  const bids = pricedBids(project, evaluation);
  const asked = await searchParams;
  const pair = chosenPair(bids, asked);
  return (
    <>
      <PageHead
        title="Two bids by cost"
        decide="What makes one bid cost more than another, and what would have to change for the two to cost the same."
      />
      <CostPages project={id} here="two-bids" />
      {pair === null ? (
        <p>
          Two bids with prices of their own are needed. <Link href={`/project/${id}/bids`}>Enter their prices</Link>.
        </p>
      ) : (
        <>
          <Pair pair={pair} bids={bids} currency={currency} />
          <TiesSection
            first={pair[0]}
            second={pair[1]}
            setting={{ area: pricedArea(evaluation), conventions: project.brief.money }}
            address={`/project/${id}/cost/two-bids?first=${pair[0].bid.id}&second=${pair[1].bid.id}`}
            chosen={{ input: textOf(asked.input), from: textOf(asked.from), to: textOf(asked.to) }}
          />
        </>
      )}
    </>
  );
}

function Pair({
  pair: [first, second],
  bids,
  currency,
}: {
  pair: NonNullable<ReturnType<typeof chosenPair>>;
  bids: ReturnType<typeof pricedBids>;
  currency: string;
}) {
  const bridge = costBridge(first.bid.cost.categories, second.bid.cost.categories);
  const ends = {
    first: { letter: first.bid.letter, index: first.index, isLeast: first.isLeast },
    second: { letter: second.bid.letter, index: second.index, isLeast: second.isLeast },
  };
  const open = [first, second].filter(({ isLeast }) => isLeast).map(({ bid }) => bid.letter);
  const letters = { first: first.bid.letter, second: second.bid.letter };
  return (
    <>
      <TwoBidsForm
        words={{ first: "From", second: "To", show: "Show these two" }}
        bids={bids.map(({ bid }) => ({ id: bid.id, letter: bid.letter, bidder: bid.bidder }))}
        first={first.bid.id}
        second={second.bid.id}
      />
      <h2>
        From bid {letters.first} to bid {letters.second}
      </h2>
      <ChartFrame
        title="What makes the difference"
        summary={[
          bridgeWords(bridge, {
            ...{ ...letters, currency },
            open,
          }),
          ...[first, second].flatMap(({ bid }) => lackingSentences(bid)),
        ].join(" ")}
        draw={(size) => <BridgeChart bridge={bridge} {...ends} currency={currency} size={size} />}
        table={<BridgeTable bridge={bridge} {...letters} open={open} currency={currency} />}
      />
    </>
  );
}
