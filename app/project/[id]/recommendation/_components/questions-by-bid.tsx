import type { Recommendation } from "#lib/document";
import styles from "../page.module.css";

/** What to ask each bidder before signing. */
export function QuestionsByBid({
  ask,
  plate,
}: {
  ask: Recommendation["ask"];
  plate: (letter: string) => React.ReactNode;
}) {
  return ask.map(({ letter, questions }) => (
    <section key={letter} className={styles.asked} aria-labelledby={`ask-${letter}`}>
      <h3 id={`ask-${letter}`}>
        <span className="visually-hidden">Bid </span>
        {plate(letter)}
      </h3>
      <ul>
        {questions.map((question) => (
          <li key={question}>{question}</li>
        ))}
      </ul>
    </section>
  ));
}
