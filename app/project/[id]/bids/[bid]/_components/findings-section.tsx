import Link from "next/link";
import type { MoneyFinding } from "#lib/cost";
import type { Finding } from "#lib/crosscheck";
import { tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { CopyText } from "../../../_components/copy-text";
import { moneyFindingTitles, moneySeverityWords } from "../../../_components/price/money-finding-words";
import styles from "./findings-section.module.css";
import { severityLabels } from "./severity-labels";

/** What does not go together in the bid as last saved, each with a neutral question to send. */
export function FindingsSection({
  findings,
  priceFindings,
  units,
  letter,
  questions,
}: {
  findings: readonly Finding[];
  /** What the sums of the bid form do not agree on, and prices that stand out. */
  priceFindings: readonly MoneyFinding[];
  units: UnitSystem;
  letter: string;
  /** The address of the page with the letter and the answers. */
  questions: string;
}) {
  const explained = [
    ...findings.map(({ key, severity, title, sentence, question }) => ({
      ...{ key, title, sentence: tell(sentence, units), question: tell(question, units) },
      ...{ weight: severityLabels[severity], isTrouble: severity === "can't be true" },
    })),
    ...priceFindings.map(({ key, severity, check, sentence, question }) => ({
      ...{ key: `price ${key}`, title: moneyFindingTitles[check], sentence, question },
      ...{ weight: moneySeverityWords[severity], isTrouble: severity === "differs" },
    })),
  ];
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
            {explained.map(({ key, weight, isTrouble, title, sentence, question }, index) => (
              <li key={key}>
                <h3>{title}</h3>
                <p className={isTrouble ? styles.trouble : styles.severity}>{weight}</p>
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
