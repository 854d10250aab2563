"use client";
import { type GateKind, gates } from "#lib/criteria";
import type { DimensionName } from "#lib/quantity";
import { TextField } from "../../../../_components/form/text-field";
import type { Kind } from "./criterion-kinds";
import styles from "./requirements.module.css";

/** The figures of a limit, one or two by its kind. */
export function LimitFields({ kind, at, dimension }: { kind: Kind<GateKind>; at: string; dimension: DimensionName }) {
  if (kind === "none") return null;
  return (
    <>
      <p className={styles.note}>{gates[kind].explanation}</p>
      <div className={styles.group}>
        {kind === "within" ? (
          <>
            <TextField name={`${at}.low`} label="Lower limit" dimension={dimension} />
            <TextField name={`${at}.high`} label="Upper limit" dimension={dimension} />
          </>
        ) : (
          <TextField name={`${at}.limit`} label="Limit" dimension={dimension} />
        )}
      </div>
    </>
  );
}
