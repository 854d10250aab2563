import type { DrawnShare } from "#lib/robustness";
import { errorOfHundred, ofHundred } from "./rank-words";
import styles from "./robustness.module.css";

/** A share of the draws, with its standard error where there is one. */
export function DrawnFigure({ share: { value, standardError } }: { share: DrawnShare }) {
  return (
    <>
      {ofHundred(value)}
      {standardError > 0 ? <span className={`soft ${styles.error}`}> ± {errorOfHundred(standardError)}</span> : null}
    </>
  );
}
