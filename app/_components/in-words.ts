/** "A", "A and B", "A, B and C". */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;

/** "bid A", "bids A and B". */
export const bidsListed = (letters: readonly string[]): string =>
  `${letters.length === 1 ? "bid" : "bids"} ${listed(letters)}`;

/** The same at the start of a sentence. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
