import type { OwnersWordsText } from "#lib/evaluation";
import { type PaperPart, paperParts } from "#lib/recommendation";

type PartText = NonNullable<NonNullable<OwnersWordsText["parts"]>[PaperPart]>;

/** Owner's words with every field that the form has. */
export type WordsValues = { parts: Record<PaperPart, PartText>; dissents: NonNullable<OwnersWordsText["dissents"]> };

/** A stored text says nothing of parts that are as generated; the form has a choice for each. */
export function filledWords({ parts = {}, dissents = [] }: OwnersWordsText): WordsValues {
  const filled = paperParts.map((part) => [part, parts[part] ?? { kind: "generated" }] as const);
  return { parts: Object.fromEntries(filled) as WordsValues["parts"], dissents };
}
