/** A bid as drawings and sentences name it; the index is its place among the bids as entered. */
export type NamedBid = Readonly<{ id: string; letter: string; index: number }>;
