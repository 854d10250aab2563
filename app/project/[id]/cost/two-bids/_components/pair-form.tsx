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
  const choices = bids.map(({ id, letter, bidder }) => (
    <option key={id} value={id}>
      Bid {letter}, {bidder}
    </option>
  ));
  return (
    <form className={`${styles.pair} screen-only`}>
      <label>
        From
        <select name="first" defaultValue={first}>
          {choices}
        </select>
      </label>
      <label>
        To
        <select name="second" defaultValue={second}>
          {choices}
        </select>
      </label>
      <button type="submit">Show these two</button>
    </form>
  );
}
