"use client";
import { useActionState } from "react";
import { type SealReply, sealFromForm } from "../actions";
import { SealOutcome } from "./seal-outcome";
import styles from "./sealed.module.css";

/** Takes the prices out of a filled form and seals them, without showing any. */
export function SealFormFile({ project, bid, mostBytes }: { project: string; bid: string; mostBytes: number }) {
  const [reply, seal, pending] = useActionState<SealReply, FormData>(sealFromForm.bind(null, { project, bid }), {
    kind: "nothing-sent",
  });
  return (
    <form action={seal} className={styles.file}>
      <label htmlFor="sealed-form">Filled bid form</label>
      <input id="sealed-form" type="file" name="file" accept=".xlsx" required />
      <p className={styles.hint}>At most {mostBytes.toLocaleString("en-US")} bytes. Only its prices are taken.</p>
      <button type="submit" aria-disabled={pending}>
        Seal the prices of this form
      </button>
      <SealOutcome reply={reply} />
    </form>
  );
}
