import { type BlankId, factBlanks, sectionBlanks } from "./blanks";
import { type ChoiceId, isChosen } from "./choices";
import type { DraftingInput, Paragraph } from "./model";
import type { SectionFacts } from "./section-facts";

/** A paragraph with those below it; null ones are left out, so that a choice can stand where its paragraph would. */
export const paragraph = (text: string, ...below: readonly (Paragraph | string | null)[]): Paragraph => ({
  text,
  note: "",
  from: "",
  below: paragraphs(...below),
});

/** The same with a note to the specifier, which is not issued. */
export const noted = (note: string, inner: Paragraph | string): Paragraph => ({
  ...(typeof inner === "string" ? paragraph(inner) : inner),
  note,
});

/** Paragraphs from texts and paragraphs. */
export const paragraphs = (...all: readonly (Paragraph | string | null)[]): readonly Paragraph[] =>
  all.flatMap((each) => (each === null ? [] : [typeof each === "string" ? paragraph(each) : each]));

/** The paragraph where the owner chose it. */
export const chosen = (
  { choices }: DraftingInput,
  id: ChoiceId,
  inner: Paragraph | string,
): Paragraph | string | null => (isChosen(choices, id) ? inner : null);

/** A blank that can be seen. `asked` says what belongs there. */
export const openBlank = (asked: string): string => `[… to be filled in: ${asked}]`;

/** What the owner filled in, or a blank. */
export function blank({ filledIn }: Pick<DraftingInput, "filledIn">, id: BlankId): string {
  const written = (filledIn[id] ?? "").trim();
  return written === "" ? openBlank(sectionBlanks[id].asked) : written;
}

/** A fact of the brief, or a blank. */
export function fact(facts: SectionFacts, name: keyof SectionFacts): string {
  const written = facts[name].trim();
  return written === "" ? openBlank(factBlanks[name]) : written;
}
