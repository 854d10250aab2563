import {
  type ComparedOn,
  type Evaluation,
  formatPoints,
  heldAgainst,
  type Project,
  singleChanges,
} from "#lib/evaluation";
import { listed } from "#lib/figure";
import type { JudgedBid } from "../../../_components/judged-bids";
import { TwoBidsForm } from "../../../_components/two-bids-form";
import { ChangeList } from "./change-list";
import type { Shown } from "./change-words";

const isOpen = ({ least, most }: ComparedOn): boolean => least < 0 && most > 0;

const on = (compared: readonly ComparedOn[]): string =>
  listed(
    compared.map(
      (one) =>
        `“${one.criterion.label}” (${formatPoints(Math.abs(one.lead))} points${isOpen(one) ? ", not settled" : ""})`,
    ),
  );

/** Two bids held against each other in words, and what it would take to change that. */
export function TwoBids({
  project,
  evaluation,
  bids,
  pair: [one, other],
  shown,
}: {
  project: Project;
  evaluation: Evaluation;
  bids: readonly JudgedBid[];
  pair: readonly [JudgedBid, JudgedBid];
  shown: Shown;
}) {
  const held = heldAgainst(one.evaluated, other.evaluated);
  const [mine, theirs] = [`Bid ${one.evaluated.letter}`, `bid ${other.evaluated.letter}`];
  const [behind, ahead] = held.lead < 0 ? [one, other] : [other, one];
  const out = [one, other].filter(({ evaluated }) => evaluated.score.standing === "fails a gate");
  return (
    <>
      <TwoBidsForm
        action="#two-bids"
        words={{ first: "This bid", second: "against", show: "Compare" }}
        bids={bids.map(({ evaluated: { id, letter, bidder } }) => ({ id, letter, bidder }))}
        first={one.evaluated.id}
        second={other.evaluated.id}
      />
      <p>
        {held.ahead.length === 0
          ? `${mine} is ahead of ${theirs} on nothing.`
          : `${mine} is ahead of ${theirs} on ${on(held.ahead)}.`}{" "}
        {held.behind.length === 0 ? "It is behind on nothing." : `It is behind on ${on(held.behind)}.`}{" "}
        {held.level.length === 0 ? "" : `The two are level on ${on(held.level)}.`}{" "}
        {Math.abs(held.lead) < 1e-12
          ? "In all, they have the same points."
          : `In all, ${mine.toLowerCase().replace(/\w$/, (letter) => letter.toUpperCase())} has ${formatPoints(Math.abs(held.lead))} points ${held.lead > 0 ? "more" : "less"}.`}
      </p>
      {[...held.ahead, ...held.behind, ...held.level].some(isOpen) ? (
        <p className="soft">“Not settled” stands where a figure that is open could turn which of the two is ahead.</p>
      ) : null}
      {out.length > 0 ? (
        <p>
          {listed(out.map(({ evaluated }) => `Bid ${evaluated.letter}`))} {out.length === 1 ? "fails" : "fail"} a gate,
          and no points make up for that.
        </p>
      ) : Math.abs(held.lead) < 1e-12 ? null : (
        <ChangeList
          changes={singleChanges(project, evaluation, behind.evaluated.id, [ahead.evaluated.id])}
          shown={shown}
          level={`bid ${behind.evaluated.letter} level with bid ${ahead.evaluated.letter}`}
          of={`bid ${behind.evaluated.letter} against bid ${ahead.evaluated.letter}`}
        />
      )}
    </>
  );
}
