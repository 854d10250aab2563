"use client";
import { useState } from "react";
import { ActForm } from "../../../../../_components/act-form";
import { sayWhoIsHere } from "../../actions";
import styles from "./people.module.css";

/** Who sits here: one of the list, somebody else by name, or nobody in particular. */
export function WhoForm({ here, listed }: { here: string; listed: readonly string[] }) {
  const [chosen, setChosen] = useState(here === "" ? "nobody" : listed.includes(here) ? here : "other");
  return (
    <ActForm action={sayWhoIsHere} button="This is who I am" label="Who is at this keyboard">
      {(typed) => (
        <div className={styles.who}>
          <div>
            <label htmlFor="who-listed">You are</label>
            <select id="who-listed" name="listed" value={chosen} onChange={({ target }) => setChosen(target.value)}>
              <option value="nobody">Nobody in particular</option>
              {listed.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
              <option value="other">Somebody else</option>
            </select>
          </div>
          {chosen === "other" ? (
            <div>
              <label htmlFor="who-name">Name</label>
              <input
                id="who-name"
                name="name"
                defaultValue={typed.name ?? (listed.includes(here) ? "" : here)}
                autoComplete="name"
                maxLength={80}
                required
              />
            </div>
          ) : null}
        </div>
      )}
    </ActForm>
  );
}
