import { listed } from "#lib/figure";

/** Bids by their letters: "bid A", "bids A and C", "bids A, B and D". */
export const bidsInWords = (letters: readonly string[]): string =>
  `${letters.length < 2 ? "bid" : "bids"} ${listed(letters)}`;

/** The same at the start of a sentence. */
export const bidsAtStart = (letters: readonly string[]): string => bidsInWords(letters).replace(/^b/, "B");
