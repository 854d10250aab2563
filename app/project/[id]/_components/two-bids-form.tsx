import styles from "./choices.module.css";

/** Which two bids are looked at; a plain form, so that the address names them and can be passed on. */
export function TwoBidsForm({
  bids,
  first,
  second,
  words,
  action,
}: {
  bids: readonly Readonly<{ id: string; letter: string; bidder: string }>[];
  first: string;
  second: string;
  /** What stands at the two choices and on the button. */
  words: Readonly<{ first: string; second: string; show: string }>;
  /** Where on the page the answer stands. */
  action?: `#${string}`;
}) {
  const choices = bids.map(({ id, letter, bidder }) => (
    <option key={id} value={id}>
      Bid {letter}, {bidder}
    </option>
  ));
  return (
    <form className={`${styles.choices} screen-only`} action={action}>
      <label>
        {words.first}
        <select name="first" defaultValue={first}>
          {choices}
        </select>
      </label>
      <label>
        {words.second}
        <select name="second" defaultValue={second}>
          {choices}
        </select>
      </label>
      <button type="submit">{words.show}</button>
    </form>
  );
}
