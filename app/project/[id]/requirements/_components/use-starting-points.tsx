"use client";
import { useState } from "react";
import { useFormContext } from "react-hook-form";
import type { Addition, CriteriaText } from "#lib/criteria";
import type { RequirementsText } from "#lib/evaluation";
import { UndoNotice } from "../../../../_components/form/undo-notice";

/** What was put into the form, and what stood there before. */
type Done = Readonly<{ said: string; before: CriteriaText }>;

/** Puts criteria of the library into the form, and takes the last of it back. */
export function useStartingPoints() {
  const { getValues, setValue } = useFormContext<RequirementsText>();
  const [done, setDone] = useState<Done | null>(null);
  const put = ({ criteria, headings }: CriteriaText) => {
    setValue("headings", structuredClone([...headings]), { shouldDirty: true });
    setValue("criteria", structuredClone([...criteria]), { shouldDirty: true });
  };
  const add = (addition: Addition, said: string) => {
    const before = structuredClone({ criteria: getValues("criteria"), headings: getValues("headings") ?? [] });
    put(addition.result);
    setDone({ said, before });
  };
  const notice =
    done === null ? null : (
      <UndoNotice
        key={done.said}
        said={done.said}
        undo={() => {
          put(done.before);
          setDone(null);
        }}
      />
    );
  return { add, notice };
}
