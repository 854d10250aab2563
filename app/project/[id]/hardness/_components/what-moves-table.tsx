import { type InputEffect, whatMovesIt, yearInWords } from "#lib/impact";
import { BidLetter } from "../../../../_components/bid-letter";
import { Scroller } from "../../../../_components/scroller";
import { type ChanceLine, chanceText } from "./chance-line";

function End({ end }: { end: InputEffect["low"] }) {
  return (
    <>
      {yearInWords(end.firstYearBelowLevel)}
      <div className="small soft">
        {end.at}; {chanceText(end.chanceInThatYear)}
      </div>
    </>
  );
}

/** For each bid the inputs that move the first year below the owner's level, the strongest first. */
export function WhatMovesTable({ lines }: { lines: readonly ChanceLine[] }) {
  const moved = lines.flatMap(({ letter, index, outlook }) =>
    whatMovesIt(outlook.question).map((effect, rank) => ({ letter, index, effect, rank })),
  );
  if (moved.length === 0) return null;
  return (
    <Scroller label="What moves the first year below the owner’s level">
      <table>
        <caption>
          First year below the owner’s level with one input at its low and at its high end, the others as they are;
          beside it what the input is there and the chance in the year found without moving it
        </caption>
        <thead>
          <tr>
            <th scope="col">Bid</th>
            <th scope="col">Input</th>
            <th scope="col">At its low end</th>
            <th scope="col">At its high end</th>
          </tr>
        </thead>
        <tbody>
          {moved.map(({ letter, index, effect, rank }) => (
            <tr key={`${letter} ${effect.input}`}>
              <th scope="row">
                {rank === 0 ? (
                  <BidLetter letter={letter} index={index} />
                ) : (
                  <span className="visually-hidden">Bid {letter}</span>
                )}
              </th>
              <td>{effect.input}</td>
              <td>
                <End end={effect.low} />
              </td>
              <td>
                <End end={effect.high} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
