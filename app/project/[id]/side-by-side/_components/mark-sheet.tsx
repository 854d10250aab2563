import { type StatusWord, statusMarks, statusWords } from "../../../../_components/status";

const findingMark = "mark-finding";
const idOf = (word: StatusWord) => `mark-${word.replaceAll(" ", "-")}`;

/** The drawings of all marks, once for the page: some thousand cells point to them. */
export function MarkSheet() {
  return (
    <svg width="0" height="0" aria-hidden="true">
      {statusWords.map((word) => (
        <symbol key={word} id={idOf(word)} viewBox="0 0 16 16">
          {statusMarks[word]}
        </symbol>
      ))}
      <symbol id={findingMark} viewBox="0 0 16 16">
        <path d="M3.5 15V1.5h9L10 5l2.5 3.5h-9" fill="none" stroke="currentColor" strokeWidth="1.5" />
      </symbol>
    </svg>
  );
}

export function MarkOf({ word }: { word: StatusWord | "finding" }) {
  return (
    <svg aria-hidden="true">
      <use href={`#${word === "finding" ? findingMark : idOf(word)}`} />
    </svg>
  );
}
