import type { Choice } from "../../../../_components/form/choice-field";

/** The price lines of the bids by name. One that no bid has any more keeps its place, so that it is not lost. */
export const priceLineChoices = (labels: readonly string[], chosen: string | undefined): readonly Choice[] => [
  { value: "", label: "None, not priced" },
  ...labels.map((label) => ({ value: label, label })),
  ...(chosen === undefined || chosen === "" || labels.includes(chosen)
    ? []
    : [{ value: chosen, label: `${chosen} (no bid has this line)` }]),
];
