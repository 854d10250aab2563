/** Parts of the board's paper in the order in which they are read. */
export const paperParts = [
  "support",
  "question",
  "bids",
  "gates",
  "deciding",
  "firmness",
  "unknown",
  "counting",
  "asking",
] as const;

export type PaperPart = (typeof paperParts)[number];

/**
 * What the owner makes of one part: nothing, words of their own after the generated ones, or words in their place.
 * `beside` is the generated text that the owner had before their eyes, so that a later reader can tell whether the
 * figures have moved since.
 */
export type PartWords = Readonly<
  | { kind: "generated" }
  | { kind: "added"; words: string; beside: string }
  | { kind: "instead"; words: string; beside: string }
>;

/** A view of somebody who decides with the others but does not agree. */
export type Dissent = Readonly<{ name: string; words: string }>;

/** All that people write into the board's paper. */
export type OwnersWords = Readonly<{
  parts: Readonly<Record<PaperPart, PartWords>>;
  dissents: readonly Dissent[];
}>;

/** A paper into which nobody has written yet. */
export const nothingWritten: OwnersWords = {
  parts: Object.fromEntries(paperParts.map((part) => [part, { kind: "generated" }])) as OwnersWords["parts"],
  dissents: [],
};
