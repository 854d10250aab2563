"use client";
import { useId, useRef } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import fieldStyles from "../../../../../_components/form/field.module.css";
import { TextField } from "../../../../../_components/form/text-field";

const waysToGive = {
  "lump-sum": "As a lump sum",
  "per-area": "Per area of the field",
  "per-unit": "As quantity and unit price",
} as const;

type Way = keyof typeof waysToGive;
type AmountText = Readonly<{ kind: Way; price?: string; quantity?: string; unitPrice?: string }>;

/** An amount as written. What was typed one way is kept when another way is chosen. */
export function AmountFields({ name, what }: { name: string; what: string }) {
  const { setValue, getValues, unregister } = useFormContext();
  const id = useId();
  const kind: Way = useWatch({ name: `${name}.kind`, exact: true }) ?? "lump-sum";
  const quantity = useRef("");
  const choose = (way: Way) => {
    const before: AmountText = getValues(name);
    if (before.quantity !== undefined) quantity.current = before.quantity;
    const price = before.price ?? before.unitPrice ?? "";
    unregister([`${name}.price`, `${name}.quantity`, `${name}.unitPrice`]);
    const amount = way === "per-unit" ? { quantity: quantity.current, unitPrice: price } : { price };
    setValue(name, { kind: way, ...amount }, { shouldDirty: true });
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
      {kind === "per-unit" ? (
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
