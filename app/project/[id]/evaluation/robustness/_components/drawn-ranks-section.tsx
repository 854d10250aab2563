"use client";
import { useId, useState } from "react";
import { type Comparison, usualConcentration, type WeightChoice } from "#lib/robustness";
import { ChartFrame } from "../../../../../_components/chart/chart-frame";
import { HowItGoes } from "../../../../../_components/drawing/how-it-goes";
import { useDrawing } from "../../../../../_components/drawing/use-drawing";
import choices from "../../../_components/choices.module.css";
import { drawnRanks } from "../_drawing/drawn-ranks";
import type { RankDrawingOrder, RankDrawingOutcome } from "../_drawing/rank-order";
import { AcceptabilityChart } from "./acceptability-chart";
import { AcceptabilityTable } from "./acceptability-table";
import { CentralWeights } from "./central-weights";
import type { NamedBid } from "./named-bid";
import { choiceWords, rankWords } from "./rank-words";
import styles from "./robustness.module.css";
import { WinningTable } from "./winning-table";

const drawnChoices: readonly WeightChoice[] = [
  { kind: "near-owners", concentration: usualConcentration },
  { kind: "owners-order" },
  { kind: "any" },
];
const titles: Readonly<Record<WeightChoice["kind"], string>> = {
  owners: "The owner’s weights, open claims drawn",
  "near-owners": "Weights near the owner’s",
  "owners-order": "Weights in the owner’s order",
  any: "All weights",
};
/** With every claim known, the owner's own weights have one order only, and there is nothing to draw. */
const choicesFor = ({ bids }: Comparison): readonly WeightChoice[] =>
  bids.some(({ standing, values }) => standing === "in" && values.some(({ kind }) => kind !== "known"))
    ? [{ kind: "owners" }, ...drawnChoices]
    : drawnChoices;

const drawsOffered = [10_000, 100_000, 1_000_000] as const;

/** Draws sets of weights in a worker of the browser, tells how far it is, and shows how often each bid comes where. */
export function DrawnRanksSection({
  comparison,
  bids,
  criteria,
}: {
  comparison: Comparison;
  bids: readonly NamedBid[];
  criteria: readonly Readonly<{ label: string; share: number }>[];
}) {
  const id = useId();
  const { state, start, cancel } = useDrawing<RankDrawingOrder, RankDrawingOutcome>(drawnRanks);
  const [draws, setDraws] = useState<number>(100_000);
  const [seed, setSeed] = useState("1");
  const isSeed = /^\d{1,9}$/.test(seed.trim());
  const letterOf = (bid: string) => bids.find((one) => one.id === bid)?.letter ?? bid;
  const heaviest = criteria.toSorted((one, other) => other.share - one.share)[0] ?? { label: "", share: 0 };
  const order = (): RankDrawingOrder => ({
    comparison,
    questions: choicesFor(comparison).map((weights) => ({ weights, seed: Number(seed), draws })),
  });
  return (
    <>
      <div className={`${choices.choices} screen-only`}>
        <label htmlFor={`${id}-draws`}>
          Sets of weights
          <select id={`${id}-draws`} value={draws} onChange={({ target }) => setDraws(Number(target.value))}>
            {drawsOffered.map((offered) => (
              <option key={offered} value={offered}>
                {offered.toLocaleString("en-US")}
              </option>
            ))}
          </select>
        </label>
        <label htmlFor={`${id}-seed`}>
          Seed
          <input
            id={`${id}-seed`}
            inputMode="numeric"
            value={seed}
            aria-invalid={!isSeed}
            aria-describedby={isSeed ? undefined : `${id}-seed-problem`}
            onChange={({ target }) => setSeed(target.value)}
          />
        </label>
        {state.kind === "drawing" ? (
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        ) : (
          <button
            type="button"
            className="primary"
            aria-disabled={!isSeed}
            onClick={() => (isSeed ? start(order()) : undefined)}
          >
            Draw
          </button>
        )}
      </div>
      {isSeed ? null : (
        <p id={`${id}-seed-problem`} className={styles.problem}>
          The seed reads “{seed}”; expected a whole number such as 1.
        </p>
      )}
      <HowItGoes
        state={state}
        words={{
          counted: "Sets of weights drawn",
          what: "The ranks",
          left: "Nothing was kept.",
          done: ({ outcome: [any] }) =>
            `Drawn ${any?.draws.toLocaleString("en-US")} sets of weights of each kind with seed ${any?.seed}.`,
        }}
      />
      {state.kind === "done" ? (
        <>
          {state.order.comparison === comparison ? null : (
            <p role="note">Something has changed since these were drawn. Draw again to see what it moves.</p>
          )}
          {state.outcome.map((outcome) => (
            <ChartFrame
              key={outcome.weights.kind}
              title={titles[outcome.weights.kind]}
              summary={`${choiceWords(outcome.weights, heaviest)} ${rankWords(outcome, letterOf)}`}
              draw={(size) => <AcceptabilityChart outcome={outcome} bids={bids} size={size} />}
              table={<AcceptabilityTable outcome={outcome} bids={bids} />}
            />
          ))}
          {state.outcome
            .filter(({ weights }) => weights.kind === "near-owners")
            .map((outcome) => (
              <section key={outcome.seed} aria-label="Which bid is ahead of which">
                <h3>Which bid is ahead of which, with weights near the owner’s</h3>
                <WinningTable outcome={outcome} bids={bids} />
              </section>
            ))}
          {state.outcome
            .filter(({ weights }) => weights.kind === "any")
            .map((outcome) => (
              <section key={outcome.seed} aria-label="Weights behind each bid">
                <h3>What one would have to care for to choose each bid</h3>
                <p>
                  Of all weights, the middle of those that put a bid first. Where they are far from the owner’s, the bid
                  answers another question than the owner asked.
                </p>
                <CentralWeights outcome={outcome} bids={bids} criteria={criteria} />
              </section>
            ))}
        </>
      ) : null}
    </>
  );
}
