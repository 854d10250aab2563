"use client";
import { useFormContext, useWatch } from "react-hook-form";
import type { BidText } from "#lib/evaluation";
import { TextField } from "../../../../../_components/form/text-field";
import grid from "../../../_components/field-grid.module.css";
import styles from "./fields.module.css";

/** Who bids, under which letter, and what kind of surface in neutral words. */
export function BidHead({ otherLetters, names }: { otherLetters: readonly string[]; names: "shown" | "hidden" }) {
  const { control } = useFormContext<BidText>();
  const letter = useWatch({ control, name: "letter", exact: true });
  return (
    <section aria-labelledby="bid" className={styles.head}>
      <h2 id="bid">The bid</h2>
      <div className={grid.fields}>
        <TextField name="letter" label="Letter" className={grid.short} />
        {names === "hidden" ? null : <TextField name="bidder" label="Bidder" className={grid.wide} />}
        <TextField name="system" label="Kind of surface" className={grid.wide} />
      </div>
      {names === "hidden" ? (
        <p className={styles.hint}>
          The bidder’s name is hidden. Show bidders’ names at the top of the page to change it. Documents and words that
          you enter here may still give the bidder away.
        </p>
      ) : null}
      {otherLetters.includes(letter.trim()) ? (
        <p role="status" className={styles.trouble}>
          Another bid has the letter {letter.trim()} as well. Give each bid its own, so that readers can tell them
          apart.
        </p>
      ) : null}
      <p className={styles.hint}>
        Describe the surface without names of makers or products, for instance “layered sand and rubber, no shock
        layer”.
      </p>
    </section>
  );
}
