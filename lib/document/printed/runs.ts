import type { PrintedText, Run } from "./model";

/** A text as runs, without empty ones. */
export const runsOf = (text: PrintedText): readonly Run[] =>
  (typeof text === "string" ? [{ text, style: "plain" } as const] : text).filter((run) => run.text !== "");

/** A text without what tells its stretches apart; words of a comparison keep their marks. */
export const plainOf = (text: PrintedText): string =>
  runsOf(text)
    .map((run) => (run.style === "added" ? `{+${run.text}+}` : run.style === "removed" ? `[-${run.text}-]` : run.text))
    .join("");

/** Characters that XML can’t hold and no font shows. Text as entered may have them. */
const unprintable = /[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** A text that a file can hold: control characters and halves of signs are left out, and line ends are spaces. */
export const printable = (text: string): string => text.replace(/[\t\r\n\u2028\u2029]+/g, " ").replace(unprintable, "");
