/** Bids by their letters: "bid A", "bids A and C", "bids A, B and D". */
export function bidsInWords(letters: readonly string[]): string {
  const last = letters.at(-1) ?? "";
  if (letters.length < 2) return `bid ${last}`;
  return `bids ${letters.slice(0, -1).join(", ")} and ${last}`;
}

/** The same at the start of a sentence. */
export const bidsAtStart = (letters: readonly string[]): string => bidsInWords(letters).replace(/^b/, "B");
