/** A bid as the results name it, with its cost as entered in cents. */
export type DrawnBid = Readonly<{ id: string; letter: string; index: number; entered: number }>;
