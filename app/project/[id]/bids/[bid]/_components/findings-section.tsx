import Link from "next/link";
import type { Finding } from "#lib/crosscheck";
import { tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { CopyText } from "../../../_components/copy-text";
import styles from "./findings-section.module.css";
import { severityLabels } from "./severity-labels";

/** What does not go together in the bid as last saved, each with a neutral question to send. */
export function FindingsSection({
  findings,
  units,
  letter,
  questions,
}: {
  findings: readonly Finding[];
  units: UnitSystem;
  letter: string;
  /** The address of the page with the letter and the answers. */
  questions: string;
}) {
  const explained = findings.map(({ key, severity, title, sentence, question }) => ({
    key,
    severity,
    title,
    sentence: tell(sentence, units),
    question: tell(question, units),
  }));
  return (
    <section aria-labelledby="findings">
      <h2 id="findings">Findings and questions to the bidder</h2>
      {explained.length === 0 ? (
        <p>Nothing in the bid as last saved contradicts itself. That does not mean that every claim is shown.</p>
      ) : (
        <>
          <p>
            Read from the bid as last saved. The questions name no blame and are ready to send; change the words as your
            procurement rules ask.
          </p>
          <ol className={styles.findings}>
            {explained.map(({ key, severity, title, sentence, question }, index) => (
              <li key={key}>
                <h3>{title}</h3>
                <p className={severity === "can't be true" ? styles.trouble : styles.severity}>
                  {severityLabels[severity]}
                </p>
                <p>{sentence}</p>
                <blockquote>{question}</blockquote>
                <CopyText text={question} what={`question ${index + 1}`} />
              </li>
            ))}
          </ol>
        </>
      )}
      <p className="screen-only">
        <Link href={questions} prefetch={false}>
          Letter with all questions to bid {letter}, and answers
        </Link>
      </p>
    </section>
  );
}
