"use client";
import { useState } from "react";
import { tabSeparated } from "../_comparison/tab-separated";
import styles from "./table-controls.module.css";

/** Puts the rows and bids that are shown on the clipboard as a table for a spreadsheet. */
export function CopyTable({ rows }: { rows: () => readonly (readonly string[])[] }) {
  const [said, setSaid] = useState("");
  async function copy() {
    try {
      await navigator.clipboard.writeText(tabSeparated(rows()));
      setSaid("Copied. Paste it into a spreadsheet.");
    } catch {
      setSaid("The browser did not allow copying. Select the table and copy it by hand.");
    }
  }
  return (
    <div className={`${styles.controls} ${styles.scripted} screen-only`}>
      <button type="button" onClick={copy}>
        Copy what is shown as a table
      </button>
      <span role="status">{said}</span>
    </div>
  );
}
