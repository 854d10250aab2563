"use client";
import { useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { RequirementsText } from "#lib/evaluation";
import { freshId } from "../../../../_components/form/fresh-id";
import { RemovedNotice } from "../../../../_components/form/removed-notice";
import { CriterionFields } from "./criterion-fields";

type CriterionText = RequirementsText["criteria"][number];

const startingCriterion = (id: string): CriterionText => ({
  id,
  measure: "critical-fall-height.f1292",
  label: "",
  reason: "",
  gate: { kind: "none" },
  valueFunction: { kind: "more-is-better", worst: "", best: "" },
  weight: "10",
  evidence: { least: "stated", shortfall: "keep-open" },
});

/** The criteria in the order in which pages list them. */
export function CriteriaFields() {
  const { control, getValues } = useFormContext<RequirementsText>();
  const { fields, append, remove, insert, move } = useFieldArray({ control, name: "criteria", keyName: "key" });
  const [removed, setRemoved] = useState<{ index: number; value: CriterionText } | null>(null);
  return (
    <>
      {fields.map(({ key }, index) => (
        <CriterionFields
          key={key}
          index={index}
          last={index === fields.length - 1}
          move={(to) => move(index, to)}
          remove={() => {
            setRemoved({ index, value: structuredClone(getValues(`criteria.${index}`)) });
            remove(index);
          }}
        />
      ))}
      {removed === null ? null : (
        <RemovedNotice
          what={removed.value.label || "the criterion"}
          undo={() => {
            insert(removed.index, removed.value);
            setRemoved(null);
          }}
        />
      )}
      <button
        type="button"
        onClick={() =>
          append(
            startingCriterion(
              freshId(
                "criterion",
                getValues("criteria").map(({ id }) => id),
              ),
            ),
          )
        }
      >
        Add a criterion
      </button>
    </>
  );
}
