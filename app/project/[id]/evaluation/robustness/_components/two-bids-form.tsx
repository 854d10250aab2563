import styles from "./robustness.module.css";

/** Which two bids are held against each other; a plain form, so that the address names them and can be passed on. */
export function TwoBidsForm({
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
    <form className={`${styles.drawing} screen-only`} action="#two-bids">
      <label>
        This bid
        <select name="first" defaultValue={first}>
          {choices}
        </select>
      </label>
      <label>
        against
        <select name="second" defaultValue={second}>
          {choices}
        </select>
      </label>
      <button type="submit">Compare</button>
    </form>
  );
}
