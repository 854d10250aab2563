import type { z } from "zod";
import type { DocumentAddress } from "./save-outcome";

/** Text of an editor that reached the server but is not part of the document. */
export type Draft<Values> = Readonly<{ basedOn: number; values: Values }>;

/** What a form starts with. Version 0 stands for a document that nobody has written yet. */
export type DocumentStart<Values> = Readonly<{
  where: DocumentAddress;
  version: number;
  values: Values;
  draft: Draft<Values> | null;
}>;

/** A draft typed over this very version goes on; one typed over an older version is only offered. */
export function startOf<Values>({
  schema,
  version,
  values,
  draft,
}: {
  schema: z.ZodType<unknown, Values>;
  version: number;
  values: Values;
  draft: Draft<Values> | null;
}) {
  if (draft === null || draft.basedOn !== version) {
    return { values, start: { kind: "document" }, olderDraft: draft?.values ?? null } as const;
  }
  const problems = schema.safeParse(draft.values).error?.issues ?? [];
  const asFields = problems.map(({ path, message }) => ({ field: path.join("."), message }));
  return { values: draft.values, start: { kind: "draft", problems: asFields }, olderDraft: null } as const;
}
