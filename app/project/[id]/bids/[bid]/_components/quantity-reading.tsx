"use client";
import { useWatch } from "react-hook-form";
import type { DimensionName } from "#lib/quantity";
import styles from "./fields.module.css";
import { readingText } from "./reading-text";

/** How the text of one field was read, beside the field; nothing while it does not read. */
export function QuantityReading({ name, dimension }: { name: string; dimension: DimensionName }) {
  const text: unknown = useWatch({ name, exact: true });
  const reading = typeof text === "string" ? readingText(dimension, text) : null;
  return reading === null ? null : <span className={styles.reading}>{reading}</span>;
}
