import { inSentence } from "./in-sentence";

/** Why a figure can't be given. Facts only; the words are in `explainShortfall`. */
export type Shortfall = Readonly<
  | { kind: "not-claimed"; what: string }
  | { kind: "not-comparable"; what: string; wanted: string; got: string; reason: string }
  | { kind: "weak-evidence"; what: string; wanted: string; got: string }
  | { kind: "missing-input"; what: string }
  | { kind: "outside-validity"; what: string; reason: string }
  | { kind: "not-a-figure"; what: string; words: string }
  | { kind: "not-rated"; what: string; reason: string }
>;

/** One sentence that says why there is no figure and what to ask for. */
export function explainShortfall(shortfall: Shortfall): string {
  switch (shortfall.kind) {
    case "not-claimed":
      return `The bid does not state ${inSentence(shortfall.what)}. Ask the bidder for it.`;
    case "not-comparable":
      return `The bid gives ${inSentence(shortfall.what)} by ${shortfall.got}, not by ${shortfall.wanted}: ${shortfall.reason} Ask for a figure by ${shortfall.wanted}.`;
    case "weak-evidence":
      return `The bid shows ${inSentence(shortfall.what)} by ${inSentence(shortfall.got)}; the requirements ask for ${inSentence(shortfall.wanted)}.`;
    case "missing-input":
      return `This figure needs ${shortfall.what}.`;
    case "outside-validity":
      return `No figure for ${shortfall.what}: ${shortfall.reason}`;
    case "not-a-figure":
      return `The bid describes ${inSentence(shortfall.what)} in words only: “${shortfall.words}”. Ask for a figure.`;
    case "not-rated":
      return `${shortfall.what} is not rated yet: ${shortfall.reason}`;
  }
}
