import { concernFamilies, type LanguageNote } from "#lib/requirement";
import styles from "./language-list.module.css";

/** What is known of a law’s wording, said where it was not read itself. */
const statusWords = {
  read: "",
  "read in a secondary text": " Known from a secondary text; look up the text in force.",
  "from memory": " From memory; look up the text in force.",
  "common practice, no source": "",
} as const;

/** Notes on the language of a text: the words, the concern, what it rests on, and what could be written instead. */
export function LanguageList({
  notes,
  place,
}: {
  notes: readonly Readonly<{ key: string; note: LanguageNote; sentence: string }>[];
  /** What stands behind a note: where its words are, and the way there. */
  place?: (key: string) => React.ReactNode;
}) {
  return (
    <ol className={styles.notes}>
      {notes.map(({ key, note, sentence }) => (
        <li key={key}>
          <p className={styles.head}>
            <strong>{concernFamilies[note.family]}</strong>, {note.severity}
            {place === undefined ? null : <> · {place(key)}</>}
          </p>
          <p className={styles.sentence}>
            <Marked note={note} sentence={sentence} />
          </p>
          <p>{note.concern}</p>
          <p>
            <strong>Instead:</strong> {note.offered}
          </p>
          <details>
            <summary>
              What it rests on<span className="visually-hidden">: {note.words}</span>
            </summary>
            <ul>
              {note.basis.map(({ citation, says, status }) => (
                <li key={`${citation} ${says}`}>
                  {citation}: {says}
                  {statusWords[status]}
                </li>
              ))}
            </ul>
          </details>
        </li>
      ))}
    </ol>
  );
}

/** The sentence with the words of the note marked. */
function Marked({ note, sentence }: { note: LanguageNote; sentence: string }) {
  const from = note.start - note.sentence.start;
  const to = note.end - note.sentence.start;
  return (
    <>
      “{sentence.slice(0, from)}
      <mark>{sentence.slice(from, to)}</mark>
      {sentence.slice(to)}”
    </>
  );
}
