"use client";
import { useWatch } from "react-hook-form";
import type { CampaignText } from "#lib/evaluation";
import styles from "./field-entry.module.css";

const isDone = (drops: readonly (string | undefined)[]): boolean => drops.every((drop) => (drop ?? "").trim() !== "");

/** From one location to the next, and to any other one. */
export function LocationSteps({
  index,
  count,
  goTo,
  addLocation,
}: {
  index: number;
  count: number;
  goTo: (index: number) => void;
  addLocation: () => void;
}) {
  const locations = useWatch<CampaignText, "locations">({ name: "locations" }) ?? [];
  const done = locations.filter(({ drops }) => isDone(drops)).length;
  return (
    <nav aria-label="Locations" className={styles.steps}>
      {count === 0 ? null : (
        <>
          <div className={styles.pair}>
            <button type="button" aria-disabled={index === 0} onClick={() => index > 0 && goTo(index - 1)}>
              Previous
            </button>
            <button
              type="button"
              className="primary"
              aria-disabled={index >= count - 1}
              onClick={() => index < count - 1 && goTo(index + 1)}
            >
              Next
            </button>
          </div>
          <p>
            {done} of {count} locations have three drops.
          </p>
          <label htmlFor="go-to-location">Go to</label>
          <select id="go-to-location" value={index} onChange={({ target }) => goTo(Number(target.value))}>
            {locations.map(({ id, label, drops }, place) => (
              <option key={id} value={place}>
                {place + 1}. {label === "" ? "without a name" : label}
                {isDone(drops) ? " – done" : ""}
              </option>
            ))}
          </select>
        </>
      )}
      <p>
        <button type="button" className="plain" onClick={addLocation}>
          Add a location
        </button>
      </p>
    </nav>
  );
}
