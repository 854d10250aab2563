"use client";
import { useState } from "react";
import type { Property } from "#lib/claim";
import { propertyOptions } from "./choice-cells";
import styles from "./ledger.module.css";

/** Adds a row for a property; what is asked for and not claimed yet is offered first. */
export function AddClaim({ missing, add }: { missing: readonly Property[]; add: (property: string) => void }) {
  const [chosen, setChosen] = useState<string | null>(null);
  const property = chosen ?? missing[0]?.id ?? "";
  return (
    <div className={`${styles.add} screen-only`}>
      <label htmlFor="new-claim">Property of the next claim</label>
      <div className="row">
        <select id="new-claim" value={property} onChange={({ target }) => setChosen(target.value)}>
          <option value="">Choose it in the row</option>
          {missing.length === 0 ? null : (
            <optgroup label="Asked for, not claimed yet">
              {missing.map(({ id, label }) => (
                <option key={id} value={id}>
                  {label}
                </option>
              ))}
            </optgroup>
          )}
          {propertyOptions}
        </select>
        <button
          type="button"
          onClick={() => {
            add(property);
            setChosen(null);
          }}
        >
          Add a claim
        </button>
      </div>
    </div>
  );
}
