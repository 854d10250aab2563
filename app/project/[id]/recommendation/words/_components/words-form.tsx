"use client";
import type { z } from "zod";
import { ownersWordsSchema } from "#lib/recommendation";
import { AutosaveForm } from "../../../../../_components/form/autosave-form";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import type { Draft } from "../../../../../_components/form/start-of";
import { saveDocument } from "../../../_actions/save-document";
import { DissentFields } from "./dissent-fields";
import type { WordsValues } from "./filled-words";
import { type EditedPart, PartFields } from "./part-fields";

/** What people write into the board's paper, part by part in the order of the paper. */
export function WordsForm({
  where,
  version,
  values,
  draft,
  parts,
}: {
  where: DocumentAddress;
  version: number;
  values: WordsValues;
  draft: Draft<WordsValues> | null;
  parts: readonly EditedPart[];
}) {
  return (
    <AutosaveForm
      schema={ownersWordsSchema as unknown as z.ZodType<unknown, WordsValues>}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={saveDocument}
      label="Your words in the paper"
    >
      {parts.map((part) => (
        <PartFields key={part.part} part={part} />
      ))}
      <DissentFields />
    </AutosaveForm>
  );
}
