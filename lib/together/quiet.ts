/**
 * Places where nobody is shown to have a page open, and kinds of which nobody hears who changes them: who scores when, and
 * who enters the prices of which bid when, is not to be read off before it is opened; afterwards nobody works there any more.
 */
const places = /^(?:committee\/scoresheet|bids\/[^/]+\/sealed-prices)$/;
const kinds: readonly string[] = ["scoresheet", "sealed-prices"];

/** @param place path of a page below its project, such as "brief" */
export const isQuietPlace = (place: string): boolean => places.test(place);

/** @param kind of a document */
export const isQuietKind = (kind: string): boolean => kinds.includes(kind);
