import type { YearFound } from "../model";
import { studentFactor } from "../student-factor";
import { type ChanceQuestion, chancesOf, firstYearBelow, isKnown, type Ranged, type SpreadBasis } from "./chances";
import type { ValueBasis } from "./model";

/** Inputs that are moved one at a time. */
export type MovedInput =
  | "stated values"
  | "yearly change"
  | "sensitivity to depth loss"
  | "spread over the field"
  | "test locations"
  | "resets";

/** Where one input leads at one end. */
export type MovedEnd = Readonly<{ at: string; firstYearBelowLevel: YearFound; chanceInThatYear: number }>;

/** What an input does to the first year below the owner's level, and to the chance in the year found without moving. */
export type InputEffect = Readonly<{
  input: MovedInput;
  low: MovedEnd;
  high: MovedEnd;
  /** Years between the first years of both ends; an end not below the level within the years counts as one beyond. */
  yearsMoved: number;
  chanceMoved: number;
}>;

/** Locations that editions and testers differ between. @source ASTM F1936: editions and testers give 8 or 10 */
const usualLocations = { low: 8, high: 10 };

/** Chance that goes with the ends of a fitted yearly change, both sides together. */
const slopeChance = 0.9;

/**
 * Each input moved from its low to its high end, all others at their likely values; the one that moves the first year
 * most comes first, then the one that moves the chance in that year most. Inputs without a range are left out.
 */
export function whatMovesIt(question: ChanceQuestion): readonly InputEffect[] {
  if (!isKnown(question.basis)) return [];
  const found = firstYearBelow(question);
  const year = found.kind === "known" ? found.year : question.years;
  return movesOf(question)
    .map(({ input, low, high }): InputEffect => {
      const [lowEnd, highEnd] = [endOf(low, year), endOf(high, year)];
      return {
        input,
        low: lowEnd,
        high: highEnd,
        yearsMoved: Math.abs(yearOf(highEnd, question) - yearOf(lowEnd, question)),
        chanceMoved: Math.abs(highEnd.chanceInThatYear - lowEnd.chanceInThatYear),
      };
    })
    .sort((one, other) => other.yearsMoved - one.yearsMoved || other.chanceMoved - one.chanceMoved);
}

const yearOf = ({ firstYearBelowLevel: found }: MovedEnd, { years }: ChanceQuestion): number =>
  found.kind === "known" ? found.year : years + 1;

type Moved = Readonly<{ at: string; question: ChanceQuestion }>;
type Move = Readonly<{ input: MovedInput; low: Moved; high: Moved }>;

function endOf({ at, question }: Moved, year: number): MovedEnd {
  return {
    at,
    firstYearBelowLevel: firstYearBelow(question),
    chanceInThatYear: chancesOf(question, year).decisive,
  };
}

function movesOf(question: ChanceQuestion): readonly Move[] {
  return [
    ...basisMoves(question),
    ...spreadMoves(question),
    ...locationMoves(question),
    ...(question.resets.length === 0
      ? []
      : [
          {
            input: "resets" as const,
            low: { at: "none", question: { ...question, resets: [] } },
            high: { at: "as planned", question },
          },
        ]),
  ];
}

function basisMoves(question: ChanceQuestion): readonly Move[] {
  const { basis } = question;
  const withBasis = (at: string, moved: ValueBasis): Moved => ({ at, question: { ...question, basis: moved } });
  switch (basis.kind) {
    case "line": {
      const reach = studentFactor(slopeChance, basis.line.degreesOfFreedom) * basis.line.slopeError;
      const turned = (at: string, slope: number) =>
        withBasis(at, {
          kind: "line",
          line: {
            ...basis.line,
            slope,
            intercept: basis.line.intercept + (basis.line.slope - slope) * basis.line.meanAge,
            // the change a year is held, so it adds no uncertainty of its own
            slopeError: 0,
            points: basis.line.points.map((point) => ({ ...point, perYear: 0 })),
          },
        });
      const [low, high] = [basis.line.slope - reach, basis.line.slope + reach];
      return reach > 0
        ? [
            {
              input: "yearly change",
              low: turned("low end of the fit", low),
              high: turned("high end of the fit", high),
            },
          ]
        : [];
    }
    case "scenario": {
      const { used, change } = basis;
      const held = (at: string, rate: number) =>
        withBasis(at, { kind: "scenario", used, change: { low: rate, likely: rate, high: rate } });
      const atEnd = (end: "low" | "high") =>
        withBasis(`${end} end as stated`, {
          kind: "scenario",
          change,
          used: used.map((value) => ({ years: value.years, low: value[end], high: value[end] })),
        });
      return [
        ...(change.low < change.high
          ? [
              {
                input: "yearly change" as const,
                low: held("owner's low", change.low),
                high: held("owner's high", change.high),
              },
            ]
          : []),
        ...(used.some(({ low, high }) => low < high)
          ? [{ input: "stated values" as const, low: atEnd("low"), high: atEnd("high") }]
          : []),
      ];
    }
  }
}

function spreadMoves(question: ChanceQuestion): readonly Move[] {
  const { spread } = question;
  const move = <R extends Ranged>(input: MovedInput, ranged: R, withIt: (at: R) => SpreadBasis): readonly Move[] => {
    const end = (at: number) => ({ ...ranged, low: at, likely: at, high: at });
    const moved = (name: string, at: number) => ({ at: name, question: { ...question, spread: withIt(end(at)) } });
    return ranged.low < ranged.high ? [{ input, low: moved("low", ranged.low), high: moved("high", ranged.high) }] : [];
  };
  switch (spread.kind) {
    case "depth":
      return [
        ...move("sensitivity to depth loss", spread.perDepth, (perDepth) => ({ ...spread, perDepth })),
        ...move("spread over the field", spread.deviation, (deviation) => ({ ...spread, deviation })),
      ];
    case "share":
    case "amount":
      return move("spread over the field", spread.deviation, (deviation) => ({ ...spread, deviation }));
    case "unknown":
      return [];
  }
}

function locationMoves(question: ChanceQuestion): readonly Move[] {
  if (question.spread.kind === "unknown") return [];
  const low = Math.min(question.locations, usualLocations.low);
  const high = Math.max(question.locations, usualLocations.high);
  const withCount = (count: number) => ({ at: String(count), question: { ...question, locations: count } });
  return [{ input: "test locations", low: withCount(low), high: withCount(high) }];
}
