"use client";
import { useWatch } from "react-hook-form";
import { parseGrainSize } from "#lib/material";
import { type DimensionName, formatInterval } from "#lib/quantity";
import styles from "./fields.module.css";
import { readingText } from "./reading-text";

/** How the text of one field was read, beside the field; nothing while it does not read. */
export function QuantityReading({ name, dimension }: { name: string; dimension: DimensionName }) {
  const text: unknown = useWatch({ name, exact: true });
  const reading = typeof text === "string" ? readingText(dimension, text) : null;
  return reading === null ? null : <span className={styles.reading}>{reading}</span>;
}

/** A range of grain sizes in both systems of units, whatever it was written in. */
export function GrainReading({ name }: { name: string }) {
  const text: unknown = useWatch({ name, exact: true });
  const parsed = typeof text === "string" ? parseGrainSize(text) : null;
  const size = parsed?.ok ? (parsed.value?.size ?? null) : null;
  if (size === null) return null;
  const shown = [formatInterval("length", size, grainDisplay), formatInterval("length", size, "us")];
  return <span className={styles.reading}>{shown.map((reading) => `= ${reading}`).join(" ")}</span>;
}

/** Sieve openings are written to the micrometre. */
const grainDisplay = { unit: "mm", decimals: 3 };
