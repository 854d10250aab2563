import styles from "./bid-letter.module.css";

/** How the n-th bid is drawn: a colour of the palette and a dash pattern, both behind its letter. */
const bidDashes = ["", "7 3", "2 3", "9 3 2 3", "12 4", "5 2 1 2"] as const;
export const bidStroke = (index: number) => `var(--bid-${(index % 6) + 1})`;
export const bidDash = (index: number) => bidDashes[index % bidDashes.length] ?? "";

/** The plate that stands for a bid everywhere: its letter first, then its colour. */
export function BidLetter({ letter, index }: { letter: string; index: number }) {
  return <span className={`${styles.plate} ${styles[`bid${(index % 6) + 1}`] ?? ""}`}>{letter}</span>;
}
