"use client";
import { useId, useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { shareOfWords } from "#lib/cost";
import { type Choice, ChoiceField } from "../../../../_components/form/choice-field";
import fieldStyles from "../../../../_components/form/field.module.css";
import { TextField } from "../../../../_components/form/text-field";
import { capitalised } from "../../../../_components/in-words";

const waysToGive = {
  "lump-sum": "As a lump sum",
  "per-area": "Per area of the field",
  "per-unit": "As quantity and unit price",
  share: "As a share of a sum",
} as const;

type Way = keyof typeof waysToGive;
type AmountText = Readonly<{ kind: Way; price?: string; quantity?: string; unitPrice?: string; share?: string }>;

const sums: readonly Choice[] = Object.entries(shareOfWords).map(([value, words]) => ({
  value,
  label: capitalised(words),
}));

function amountGiven(way: Way, price: string, quantity: string) {
  switch (way) {
    case "per-unit":
      return { quantity, unitPrice: price };
    case "share":
      return { share: price, of: "accepted-bid" };
    default:
      return { price };
  }
}

/** An amount as written. What was typed one way is kept when another way is chosen. */
export function AmountFields({ name, what }: { name: string; what: string }) {
  const { setValue, getValues, unregister } = useFormContext();
  const id = useId();
  const kind: Way = useWatch({ name: `${name}.kind`, exact: true }) ?? "lump-sum";
  const quantity = useRef("");
  const choose = (way: Way) => {
    const before: AmountText = getValues(name);
    if (before.quantity !== undefined) quantity.current = before.quantity;
    const price = before.price ?? before.unitPrice ?? before.share ?? "";
    unregister([`${name}.price`, `${name}.quantity`, `${name}.unitPrice`, `${name}.share`, `${name}.of`]);
    setValue(name, { kind: way, ...amountGiven(way, price, quantity.current) }, { shouldDirty: true });
  };
  return (
    <>
      <div className={fieldStyles.field}>
        <label htmlFor={id}>{what}: how it is given</label>
        <select id={id} value={kind} onChange={({ target }) => choose(target.value as Way)}>
          {(Object.keys(waysToGive) as Way[]).map((way) => (
            <option key={way} value={way}>
              {waysToGive[way]}
            </option>
          ))}
        </select>
      </div>
      {kind === "share" ? (
        <>
          <TextField key="share" name={`${name}.share`} label={`${what}: share`} />
          <ChoiceField key="of" name={`${name}.of`} label={`${what}: share of`} choices={sums} />
        </>
      ) : kind === "per-unit" ? (
        <>
          <TextField key="quantity" name={`${name}.quantity`} label={`${what}: quantity`} />
          <TextField key="unit-price" name={`${name}.unitPrice`} label={`${what} of one unit`} />
        </>
      ) : (
        <TextField
          key={kind}
          name={`${name}.price`}
          label={kind === "lump-sum" ? `${what}: amount` : `${what} per area`}
          dimension={kind === "lump-sum" ? "money" : "moneyPerArea"}
        />
      )}
    </>
  );
}
