import type { AgainstBid } from "#lib/submittal";
import { statusMarks } from "../../../../_components/status";
import { bidWords } from "../_register/outcome-words";
import styles from "./against-bid.module.css";

const marks: Readonly<Record<AgainstBid["kind"], React.ReactNode>> = {
  "as-bid": <path d="M3 5.5h10M3 10.5h10" fill="none" stroke="currentColor" strokeWidth="1.75" />,
  weaker: statusMarks["falls short"],
  stronger: <path d="M2 13h12M8 12V3M4.5 6.5 8 3l3.5 3.5" fill="none" stroke="currentColor" strokeWidth="2" />,
  differs: <path d="M2 8q3 -5 6 0t6 0" fill="none" stroke="currentColor" strokeWidth="1.75" />,
  "not-bid": statusMarks["not asked"],
  "not-shown": statusMarks["not shown"],
  "not-comparable": statusMarks["not comparable"],
};

/** How a submitted value stands to what was bid: a word and a mark of its own. */
export function AgainstBidWord({ of }: { of: AgainstBid["kind"] }) {
  return (
    <span className={`${styles.word} ${of === "weaker" ? styles.trouble : ""}`}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        {marks[of]}
      </svg>
      {bidWords[of]}
    </span>
  );
}
