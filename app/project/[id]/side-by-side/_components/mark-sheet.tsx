import { type StatusWord, statusMarks, statusWords } from "../../../../_components/status";

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
    </svg>
  );
}

export function MarkOf({ word }: { word: StatusWord }) {
  return (
    <svg aria-hidden="true">
      <use href={`#${idOf(word)}`} />
    </svg>
  );
}
