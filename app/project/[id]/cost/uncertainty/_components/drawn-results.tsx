"use client";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { HowItGoes } from "../../../../../_components/drawing/how-it-goes";
import { useDrawing } from "../../../../../_components/drawing/use-drawing";
import type { CostDrawingOrder } from "../_drawing/drawing-order";
import { drawnCosts } from "../_drawing/drawn-costs";
import { ChanceChart } from "./chance-chart";
import type { DrawnBid } from "./drawn-bid";
import { isSameOrder } from "./is-same-order";
import { ChanceTable, OutcomeTable } from "./outcome-table";
import { outcomeWords } from "./outcome-words";
import { RangeChart } from "./range-chart";

/** Draws the costs in a worker of the browser, tells how far it is, and shows what came out. */
export function DrawnResults({
  order,
  bids,
  currency,
}: {
  order: CostDrawingOrder;
  bids: readonly DrawnBid[];
  currency: string;
}) {
  const { state, last, start, cancel } = useDrawing(drawnCosts);
  return (
    <>
      <p className="row screen-only">
        {state.kind === "drawing" ? (
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        ) : (
          <button type="button" className="primary" onClick={() => start(order)}>
            Draw {order.samples.toLocaleString("en-US")} times
          </button>
        )}
      </p>
      <HowItGoes
        state={state}
        words={{
          counted: "Draws made",
          what: "The costs",
          left: last === null ? "Nothing was kept." : "What stands below is from the drawing before.",
          done: ({ outcome: { samples, seed } }) => `Drawn ${samples.toLocaleString("en-US")} times with seed ${seed}.`,
        }}
      />
      {last === null ? null : (
        <>
          {isSameOrder(last.order, order) ? null : (
            <p role="status">
              <strong>Out of date.</strong> Something has changed since these were drawn. Draw again to see what it
              moves.
            </p>
          )}
          {outcomeWords(last.outcome, bids, currency).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <ChartFrame
            title="How far each cost may lie from the entered one"
            summary="The broad bar holds 9 draws in 10, the dark bar every second one, and the thick rule is the middle. The dashed rule is the cost as entered."
            draw={(size) => <RangeChart outcome={last.outcome} bids={bids} currency={currency} size={size} />}
            table={<OutcomeTable outcome={last.outcome} bids={bids} currency={currency} />}
          />
          <ChartFrame
            title="How sure a sum of money is to be enough"
            summary="Each curve rises from the sums that hardly any draw stays under to those that nearly all do. Where it crosses 90, nine draws in ten cost no more."
            draw={(size) => <ChanceChart outcome={last.outcome} bids={bids} currency={currency} size={size} />}
            table={<ChanceTable outcome={last.outcome} bids={bids} currency={currency} />}
          />
        </>
      )}
    </>
  );
}
