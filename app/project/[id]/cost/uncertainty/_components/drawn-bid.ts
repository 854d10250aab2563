/** A bid as the results name it, with its cost as entered in cents, which is the least it can be where `isLeast`. */
export type DrawnBid = Readonly<{ id: string; letter: string; index: number; entered: number; isLeast: boolean }>;
