"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { costCategories, costLines, type PriceLineKind, technicalLinks } from "#lib/cost";
import { type Choice, ChoiceField } from "../../../../_components/form/choice-field";
import { LongTextField } from "../../../../_components/form/long-text-field";
import { TextField } from "../../../../_components/form/text-field";
import styles from "../field-grid.module.css";
import { AmountFields } from "./amount-fields";
import { ReuseFields } from "./reuse-fields";
import { RoleFields } from "./role-fields";
import { GrowthField, ScheduleFields } from "./schedule-fields";

const givers: readonly Choice[] = [
  { value: "bid", label: "The bid" },
  { value: "owner-estimate", label: "The owner, as an estimate" },
];
const categories: readonly Choice[] = Object.entries(costCategories).map(([value, { label }]) => ({ value, label }));
const purposes: readonly Choice[] = [
  { value: "", label: "Something else, or not said" },
  ...Object.values(technicalLinks).map(({ id, label }) => ({ value: id, label })),
];
const removalsAtEnd: readonly Choice[] = [
  { value: "used-life-share", label: "The share of the life used up" },
  { value: "full", label: "In full" },
  { value: "none", label: "Not counted" },
];
const residuals: readonly Choice[] = [
  { value: "straight-line", label: "Cost × remaining life ÷ life" },
  { value: "stated", label: "A sum that is stated" },
  { value: "none", label: "Nothing" },
];

type Named = Readonly<{ name: string }>;

/** The fields of one price line: those of its kind between those that every line has. */
export function PriceLineFields({
  name,
  kind,
  place,
  givenBy = "asked",
}: Named & {
  kind: PriceLineKind;
  place: number;
  /** Where all lines are the owner’s, nobody is asked who gives them. */
  givenBy?: "asked" | "owner";
}) {
  return (
    <fieldset className={styles.fields}>
      <legend className="visually-hidden">
        Price line {place}: {costLines[kind].label}
      </legend>
      <TextField name={`${name}.label`} label="What it is for" className={styles.wide} />
      {givenBy === "owner" ? null : (
        <ChoiceField name={`${name}.givenBy`} label="Who gives the price" choices={givers} />
      )}
      {givenBy === "owner" ? null : <RoleFields name={`${name}.role`} />}
      {kind === "replacement-chain" ? null : (
        <ChoiceField name={`${name}.category`} label="Counted under" choices={categories} />
      )}
      <AmountFields name={`${name}.amount`} what="Price" />
      {givenBy === "owner" ? null : <ExtensionField name={name} />}
      <KindFields name={name} kind={kind} />
      <ChoiceField
        name={`${name}.purpose`}
        label="Spent on"
        hint="So that nothing is worked out that is priced here."
        choices={purposes}
      />
      <TextField name={`${name}.document`} label="Document" />
      <TextField name={`${name}.page`} label="Page" className={styles.short} />
      <LongTextField name={`${name}.note`} label="Note" rows={1} className={styles.wide} />
    </fieldset>
  );
}

/** What a quantity or the area times its price comes to in the words of the bid, to be checked. */
function ExtensionField({ name }: Named) {
  const way: unknown = useWatch({ name: `${name}.amount.kind` });
  return way === "per-unit" || way === "per-area" ? (
    <TextField
      name={`${name}.statedExtension`}
      label="Extension as stated"
      hint={`Checked against ${way === "per-unit" ? "quantity × unit price" : "area × price"}.`}
      dimension="money"
    />
  ) : null;
}

function KindFields({ name, kind }: Named & { kind: PriceLineKind }) {
  switch (kind) {
    case "at-base-date":
    case "in-year":
    case "yearly":
    case "periodic":
      return <ScheduleFields name={name} kind={kind} />;
    case "replacement-chain":
      return <ChainFields name={name} />;
  }
}

function ChainFields({ name }: Named) {
  return (
    <>
      <TextField name={`${name}.life`} label="Life" hint="For instance 10 years." />
      <ChoiceField name={`${name}.lifeGivenBy`} label="Who gives the life" choices={givers} />
      <ReuseFields name={name} />
      <TextField
        name={`${name}.firstReplacement`}
        label="First renewal in year"
        hint="Empty: when its life is over. For instance 12 where it is put off."
      />
      <TextField
        name={`${name}.replacedShare`}
        label="Share renewed each time"
        hint="Empty: the whole. For instance 40 %."
      />
      <TextField
        name={`${name}.renewalSaving`}
        label="Saved at renewal"
        hint="For instance 30 % for infill used again."
      />
      <GrowthField name={name} />
      <ResidualFields name={name} />
      <RemovalFields name={name} />
    </>
  );
}

/** What the part is worth at the end of the study, and the sum where one is stated. */
function ResidualFields({ name }: Named) {
  const residual: unknown = useWatch({ name: `${name}.residual` });
  return (
    <>
      <ChoiceField name={`${name}.residual`} label="Value left at the study’s end" choices={residuals} />
      {residual === "stated" ? (
        <TextField
          name={`${name}.statedResidual`}
          label="Value as stated"
          hint="In money of the base date; a minus sign where it costs something then."
          dimension="money"
        />
      ) : null}
    </>
  );
}

/** Taking out and disposing of one generation, where the line prices that too. */
function RemovalFields({ name }: Named) {
  const { setValue, getValues } = useFormContext();
  const removal: unknown = useWatch({ name: `${name}.removal` });
  const isPriced = removal !== null && removal !== undefined;
  const change = (priced: "priced" | "elsewhere") => {
    if (priced === "priced" && getValues(`${name}.removalGivenBy`) === undefined)
      setValue(`${name}.removalGivenBy`, "owner-estimate");
    const amount = priced === "priced" ? { kind: "lump-sum", price: "" } : null;
    setValue(`${name}.removal`, amount, { shouldDirty: true });
  };
  return (
    <>
      <p className={styles.full}>
        <button type="button" className="plain" onClick={() => change(isPriced ? "elsewhere" : "priced")}>
          {isPriced ? "Leave removal out of this line" : "Price removal and disposal in this line"}
        </button>
      </p>
      {isPriced ? (
        <>
          <AmountFields name={`${name}.removal`} what="Removal" />
          <ChoiceField name={`${name}.removalGivenBy`} label="Who gives the removal" choices={givers} />
          <ChoiceField
            name={`${name}.removalAtStudyEnd`}
            label="Removal at the study’s end"
            choices={removalsAtEnd}
            className={styles.wide}
          />
        </>
      ) : null}
    </>
  );
}
