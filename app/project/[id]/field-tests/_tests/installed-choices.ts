import type { Choice } from "../../../../_components/form/choice-field";

/** The bids whose system may have been installed. One that is no longer here keeps its place, so that it is not lost. */
export const installedChoices = (
  bids: readonly Readonly<{ id: string; letter: string; bidder: string }>[],
  installed: string,
): readonly Choice[] => [
  { value: "", label: "Not named" },
  ...bids.map(({ id, letter, bidder }) => ({ value: id, label: `${letter}: ${bidder}` })),
  ...(installed === "" || bids.some(({ id }) => id === installed)
    ? []
    : [{ value: installed, label: "A bid that is no longer here" }]),
];
