import type { ArticleChange, ParagraphChange } from "#lib/requirement";
import styles from "./section-changes.module.css";

const articleWords = { added: "new", removed: "taken out", changed: "changed" } as const;
const paragraphWords = { added: "new", removed: "taken out", changed: "changed" } as const;

/** What changed between two versions, article by article. Words put in are underlined, words taken out struck through. */
export function SectionChanges({ changes }: { changes: readonly ArticleChange[] }) {
  if (changes.length === 0) return <p>No word of the section changed.</p>;
  return (
    <>
      {changes.map(({ id, heading, kind, changes: paragraphs }) => (
        <section key={id} className={styles.article} aria-label={heading}>
          <h4>
            {heading} <span className={styles.kind}>{articleWords[kind]}</span>
          </h4>
          <ul>
            {paragraphs.map((change, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: changes have no name but their place
              <li key={index}>
                <span className={styles.kind}>
                  {change.at}, {paragraphWords[change.kind]}:
                </span>{" "}
                <Changed change={change} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

function Changed({ change }: { change: ParagraphChange }) {
  switch (change.kind) {
    case "added":
      return <ins>{change.text}</ins>;
    case "removed":
      return <del>{change.text}</del>;
    case "changed":
      return change.words.map(({ kind, text }, index) => {
        if (kind === "kept") return text;
        // biome-ignore lint/suspicious/noArrayIndexKey: words have no name but their place
        return kind === "added" ? <ins key={index}>{text}</ins> : <del key={index}>{text}</del>;
      });
  }
}
