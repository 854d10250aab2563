"use client";
import type { PriceLineKind } from "#lib/cost";
import { TextField } from "../../../../_components/form/text-field";

/** How a price can be paid that is not that of a part with a life. */
export type ScheduleKind = Exclude<PriceLineKind, "replacement-chain">;

type Named = Readonly<{ name: string }>;

/** When a price is paid: the fields that its kind of schedule takes. */
export function ScheduleFields({ name, kind }: Named & { kind: ScheduleKind }) {
  switch (kind) {
    case "at-base-date":
      return null;
    case "in-year":
      return (
        <>
          <TextField name={`${name}.year`} label="In year" hint="Counted from the base date, for instance 5." />
          <GrowthField name={name} />
        </>
      );
    case "yearly":
      return (
        <>
          <TextField name={`${name}.from`} label="First year" hint="Empty: year 1." />
          <TextField name={`${name}.to`} label="Last year" hint="Empty: the end of the study." />
          <GrowthField name={name} />
        </>
      );
    case "periodic":
      return (
        <>
          <TextField name={`${name}.every`} label="Every" hint="For instance 2 years." />
          <TextField name={`${name}.from`} label="First year" hint="Empty: one interval on." />
          <TextField name={`${name}.until`} label="Last year" hint="Empty: the end of the study." />
          <TextField name={`${name}.except`} label="Years left out" hint="For instance 10, 20." />
          <GrowthField name={name} />
        </>
      );
  }
}

/** Growth of a price over general inflation. */
export const GrowthField = ({ name }: Named) => (
  <TextField name={`${name}.escalation`} label="Growth a year" hint="Over general inflation; empty: none." />
);
