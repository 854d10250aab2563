import styles from "./status.module.css";

/** The words a figure or a gate can be marked with. Each has a mark of its own shape, so colour carries nothing alone. */
export const statusWords = [
  "meets",
  "falls short",
  "not shown",
  "not comparable",
  "not decided",
  "over-claimed",
  "not asked",
] as const;
export type StatusWord = (typeof statusWords)[number];

/** The mark of each word, drawn in a square of 16. */
export const statusMarks: Record<StatusWord, React.ReactNode> = {
  meets: <path d="M2 8.5 6 12.5 14 3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
  "falls short": <path d="M2 3.5h12M8 4v9M4.5 9.5 8 13l3.5-3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
  "not shown": (
    <rect
      x="3"
      y="3"
      width="10"
      height="10"
      fill="none"
      stroke="currentColor"
      strokeDasharray="2.5 2"
      strokeWidth="1.5"
    />
  ),
  "not comparable": <path d="M3 5.5h10M3 10.5h10M11 2 5 14" fill="none" stroke="currentColor" strokeWidth="1.5" />,
  "not decided": (
    <>
      <circle cx="8" cy="8" r="5.5" fill="none" stroke="currentColor" strokeWidth="1.5" />
      <path d="M8 2.5a5.5 5.5 0 0 1 0 11z" fill="currentColor" />
    </>
  ),
  "not asked": <path d="M3 8h10" fill="none" stroke="currentColor" strokeWidth="1.5" />,
  "over-claimed": <path d="M2 13h12M8 12V3M4.5 6.5 8 3l3.5 3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
};

export function Status({ word }: { word: StatusWord }) {
  const tone = word === "falls short" || word === "over-claimed" ? styles.trouble : styles.plain;
  return (
    <span className={`${styles.status} ${tone}`}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        {statusMarks[word]}
      </svg>
      {word}
    </span>
  );
}
