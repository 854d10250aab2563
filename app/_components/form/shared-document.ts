/** A document of which a page edits some parts only; other pages edit the others. */
export type SharedDocument<Values> = Readonly<{
  parts: readonly (keyof Values & string)[];
  /** The text of a stored document with every field of the page filled in. */
  filled: (body: unknown) => Values;
}>;

/** The parts that a page edits. */
export const ownParts = <Values extends object>(values: Values, { parts }: SharedDocument<Values>): Partial<Values> =>
  Object.fromEntries(parts.map((part) => [part, values[part]])) as Partial<Values>;

/** The other parts, as they stand in a stored document. */
export const othersParts = <Values extends object>(body: unknown, { parts, filled }: SharedDocument<Values>) =>
  Object.entries(filled(body)).filter(([part]) => !parts.some((own) => own === part));
