"use client";
import type { Choice } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { AmountFields } from "./amount-fields";
import { ScheduleFields, type ScheduleKind } from "./schedule-fields";

const schedules: readonly Choice[] = [
  { value: "at-base-date", label: "Once, at the base date" },
  { value: "yearly", label: "Every year" },
  { value: "periodic", label: "Every few years" },
  { value: "in-year", label: "Once, in a later year" },
];

const blankAmount = { kind: "lump-sum", price: "" } as const;

/** A price before anything is written: a lump sum at the base date. */
export const startingPrice = { kind: "at-base-date", amount: blankAmount } as const;

const templates = {
  "at-base-date": { amount: blankAmount },
  yearly: { amount: blankAmount, from: "", to: "", escalation: "" },
  periodic: { amount: blankAmount, every: "", from: "", until: "", except: "", escalation: "" },
  "in-year": { amount: blankAmount, year: "", escalation: "" },
};

/** An amount and when it is paid, for a price that the owner gives. */
export function PlainPriceFields({ name, what }: { name: string; what: string }) {
  return (
    <>
      <AmountFields name={`${name}.amount`} what={what} />
      <KindField<ScheduleKind>
        name={name}
        label={`${what}: when it is paid`}
        choices={schedules}
        templates={templates}
        fields={(kind) => <ScheduleFields name={name} kind={kind} />}
      />
    </>
  );
}
