"use client";
import type { z } from "zod";
import { costingSchema } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import type { SharedDocument } from "../../../../_components/form/shared-document";
import { saveDocument } from "../../_actions/save-document";
import type { CostingStart } from "./costing-start";

/** A form over part of the owner's side of the money; what other pages edit of it stays as they left it. */
export function CostingForm<Values extends CostingText>({
  start,
  shared,
  label,
  children,
}: {
  start: CostingStart<Values>;
  /** What the page edits of it. It must not change while the page is open. */
  shared: SharedDocument<Values>;
  label: string;
  children: React.ReactNode;
}) {
  // a form holds text in every field; the schema takes less as well, which the compiler can't tell of an open type
  const schema = costingSchema as unknown as z.ZodType<unknown, Values>;
  return (
    <AutosaveForm schema={schema} {...start} save={saveDocument} label={label} shared={shared}>
      {children}
    </AutosaveForm>
  );
}
