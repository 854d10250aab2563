import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { recommendation } from "#lib/document";
import { BidLetter } from "../../../_components/bid-letter";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { Scroller } from "../../../_components/scroller";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Recommendation" };

export default async function RecommendationPage({ params }: PageProps<"/project/[id]/recommendation">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadEvaluation(id), readersUnits()]);
  if (loaded === null) notFound();
  const { project, evaluation } = loaded;
  const text = recommendation(project, evaluation, units);
  const indexOf = (letter: string) => evaluation.bids.findIndex((bid) => bid.letter === letter);
  const plate = (letter: string) => <BidLetter letter={letter} index={indexOf(letter)} />;
  const lacks = evaluation.bids.length === 0 ? "bids" : project.requirements.criteria.length === 0 ? "criteria" : null;
  const head = (
    <>
      <PageHead {...pageOf("recommendation")} />
      <section className={styles.support} aria-labelledby="support">
        <h2 id="support">{text.support.headline}</h2>
        <p>{lacks === null ? text.support.sentences.join(" ") : <NothingToSupport project={id} lacks={lacks} />}</p>
      </section>
    </>
  );
  if (lacks !== null) return <article className={styles.report}>{head}</article>;
  return (
    <article className={styles.report}>
      {head}
      {text.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <h2>The question</h2>
      <p>{text.question.join(" ")}</p>
      <h2>The bids</h2>
      <ul className={styles.lettered}>
        {text.bids.map(({ letter, line }) => (
          <li key={letter}>
            {plate(letter)} <span>{line}</span>
          </li>
        ))}
      </ul>
      <h2>The gates</h2>
      <p>{text.gates.join(" ")}</p>
      {text.deciding.length === 0 ? null : (
        <>
          <h2>The figures that weigh most</h2>
          <Scroller label="The figures that weigh most">
            <table className={styles.deciding}>
              <thead>
                <tr>
                  <th scope="col">What counts, and why</th>
                  {text.bids.map(({ letter }) => (
                    <th key={letter} scope="col">
                      <span className="visually-hidden">Bid </span>
                      {plate(letter)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {text.deciding.map(({ label, reason, bids }) => (
                  <tr key={label}>
                    <th scope="row">
                      {label}
                      <span className={styles.reason}>{reason}</span>
                    </th>
                    {bids.map(({ letter, text: figure }) => (
                      <td key={letter}>{figure}</td>
                    ))}
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroller>
          <p className="soft screen-only">
            Every figure with its working: <Link href={`/project/${id}/side-by-side`}>Side by side</Link>,{" "}
            <Link href={`/project/${id}/evaluation`}>Evaluation</Link>.
          </p>
        </>
      )}
      <div className={styles.secondSheet}>
        {text.firmness.length === 0 ? null : (
          <>
            <h2>How firm this is</h2>
            <p>{text.firmness.join(" ")}</p>
          </>
        )}
        <h2>What is not known</h2>
        {text.notKnown.length === 0 ? (
          <p>Every figure that counts is shown with the proof asked for.</p>
        ) : (
          <ul className={styles.lettered}>
            {text.notKnown.map(({ letter, line }) => (
              <li key={letter}>
                {plate(letter)} <span>{line}</span>
              </li>
            ))}
          </ul>
        )}
        {text.ask.length === 0 ? null : (
          <>
            <h2>What to ask before signing</h2>
            {text.ask.map(({ letter, questions }) => (
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
            ))}
          </>
        )}
        <h2>How the figures are counted</h2>
        <p>{text.conventions}</p>
        <div className={styles.signatures} aria-hidden="true">
          <p>For the owner</p>
          <p>Date</p>
        </div>
      </div>
    </article>
  );
}

function NothingToSupport({ project, lacks }: { project: string; lacks: "bids" | "criteria" }) {
  const [slug, words, rest] =
    lacks === "bids"
      ? ["bids", "Enter the bids", "each claim as it is written"]
      : ["requirements", "Set the criteria", "what every bid must meet and what counts for how much"];
  return (
    <>
      <Link href={`/project/${project}/${slug}`} prefetch={false}>
        {words}
      </Link>
      , {rest}. This page then says in two printed pages what the figures support, how firm that is, what is not known,
      and what to ask before signing.
    </>
  );
}
