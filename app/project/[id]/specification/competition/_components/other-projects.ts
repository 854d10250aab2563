/** Projects whose bids can be taken in; `more` where there are others, which a search finds. */
export type OtherProjects = Readonly<{ projects: readonly Readonly<{ id: string; name: string }>[]; more: boolean }>;
