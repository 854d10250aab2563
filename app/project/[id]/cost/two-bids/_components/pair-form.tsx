import type { Choice } from "../../../../../_components/form/choice-field";
import { options } from "../../../../../_components/form/choice-field";
import styles from "./pair-form.module.css";

/** Which two bids are looked at; a plain form, so that the address names them and can be passed on. */
export function PairForm({
  bids,
  first,
  second,
}: {
  bids: readonly Readonly<{ id: string; letter: string; bidder: string }>[];
  first: string;
  second: string;
}) {
  const choices: readonly Choice[] = bids.map(({ id, letter, bidder }) => ({
    value: id,
    label: `Bid ${letter}, ${bidder}`,
  }));
  return (
    <form className={`${styles.pair} screen-only`}>
      <label>
        From
        <select name="first" defaultValue={first}>
          {options(choices)}
        </select>
      </label>
      <label>
        To
        <select name="second" defaultValue={second}>
          {options(choices)}
        </select>
      </label>
      <button type="submit">Show these two</button>
    </form>
  );
}
