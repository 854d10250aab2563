import { BidLetter } from "../../../../_components/bid-letter";
import { ShowWorking } from "../../../../_components/working";
import { CopyText } from "../../_components/copy-text";
import { moneySeverityWords } from "../../_components/price/money-finding-words";
import type { CostedBid } from "./costed-bid";
import styles from "./levelling.module.css";

/** What the bid form's own figures do not agree on, and prices that stand out. Notes, no verdicts. */
export function PriceNotes({ project, bids }: { project: string; bids: readonly CostedBid[] }) {
  const found = bids.filter(({ priceFindings }) => priceFindings.length > 0);
  if (found.length === 0)
    return <p>Extensions, sums and words agree in every bid, as far as they are entered, and no price stands out.</p>;
  return found.map(({ id, letter, index, priceFindings }) => (
    <section key={id} aria-label={`Prices of bid ${letter}`}>
      <h3>
        Bid <BidLetter letter={letter} index={index} />
      </h3>
      <ul className={styles.notes}>
        {priceFindings.map(({ key, severity, sentence, question, working }, at) => (
          <li key={key}>
            <p>
              <strong>{moneySeverityWords[severity]}.</strong> {sentence}
            </p>
            <blockquote>{question}</blockquote>
            <CopyText text={question} what={`question ${at + 1} on the prices of bid ${letter}`} />
            <ShowWorking project={project} of={`note ${at + 1}, bid ${letter}`} working={working} />
          </li>
        ))}
      </ul>
    </section>
  ));
}
