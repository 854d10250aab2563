"use client";
import { useState } from "react";
import { useFormContext } from "react-hook-form";
import type { Addition, CriteriaText } from "#lib/criteria";
import type { RequirementsText } from "#lib/evaluation";
import type { ClausesText } from "#lib/requirement";
import { UndoNotice } from "../../../../_components/form/undo-notice";

/** What was put into the form, and what stood there before: criteria that are replaced take their clauses with them. */
type Done = Readonly<{ said: string; before: CriteriaText & Readonly<{ clauses: ClausesText }> }>;

/** The clauses that stand by themselves or beside one of these criteria. */
const clausesBeside = (clauses: ClausesText, { criteria }: CriteriaText): ClausesText =>
  clauses.filter((clause) => (clause.criterion ?? "") === "" || criteria.some(({ id }) => id === clause.criterion));

/** Puts criteria of the library into the form, and takes the last of it back. */
export function useStartingPoints() {
  const { getValues, setValue } = useFormContext<RequirementsText>();
  const [done, setDone] = useState<Done | null>(null);
  const put = ({ criteria, headings }: CriteriaText, clauses: ClausesText) => {
    setValue("headings", structuredClone([...headings]), { shouldDirty: true });
    setValue("criteria", structuredClone([...criteria]), { shouldDirty: true });
    if (clauses.length !== (getValues("clauses") ?? []).length) setValue("clauses", structuredClone([...clauses]));
  };
  const add = (addition: Addition, said: string) => {
    const [criteria, headings, clauses] = getValues(["criteria", "headings", "clauses"]);
    const before = structuredClone({ criteria, headings: headings ?? [], clauses: clauses ?? [] });
    put(addition.result, clausesBeside(before.clauses, addition.result));
    setDone({ said, before });
  };
  const notice =
    done === null ? null : (
      <UndoNotice
        key={done.said}
        said={done.said}
        undo={() => {
          put(done.before, done.before.clauses);
          setDone(null);
        }}
      />
    );
  return { add, notice };
}
