import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { boardPaper } from "#lib/document";
import type { PaperPart } from "#lib/recommendation";
import { BidLetter } from "../../../_components/bid-letter";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { pageOf } from "../_contents";
import { DecidingTable } from "./_components/deciding-table";
import { Dissents } from "./_components/dissents";
import { gradeWords } from "./_components/grade-words";
import { LetteredList } from "./_components/lettered-list";
import { QuestionsByBid } from "./_components/questions-by-bid";
import { Written } from "./_components/written";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Recommendation" };

export default async function RecommendationPage({ params }: PageProps<"/project/[id]/recommendation">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadEvaluation(id), readersUnits()]);
  if (loaded === null) notFound();
  const { project, evaluation, ownersWords } = loaded;
  const { text, parts, dissents, grade } = boardPaper(project, evaluation, ownersWords, units);
  const indexOf = (letter: string) => evaluation.bids.findIndex((bid) => bid.letter === letter);
  const plate = (letter: string) => <BidLetter letter={letter} index={indexOf(letter)} />;
  const lacks = evaluation.bids.length === 0 ? "bids" : project.requirements.criteria.length === 0 ? "criteria" : null;
  const head = (
    <>
      <PageHead {...pageOf("recommendation")} />
      <section className={styles.support} aria-labelledby="support">
        <h2 id="support">{parts.support.written.showsGenerated ? text.support.headline : parts.support.heading}</h2>
        {lacks === null ? (
          <Written part={parts.support}>
            <p>{text.support.sentences.join(" ")}</p>
          </Written>
        ) : (
          <p>
            <NothingToSupport project={id} lacks={lacks} />
          </p>
        )}
      </section>
    </>
  );
  /** A part with its heading; nothing where neither the evaluation nor the owner has anything to say. */
  const section = (part: PaperPart, generated: React.ReactNode) => {
    const { heading, lines, written } = parts[part];
    if (lines.length === 0 && written.words.length === 0) return null;
    return (
      <>
        <h2>{heading}</h2>
        <Written part={parts[part]}>{generated}</Written>
      </>
    );
  };
  if (lacks !== null) return <article className={styles.report}>{head}</article>;
  return (
    <article className={styles.report}>
      {head}
      {text.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <PaperWays project={id} grade={grade} />
      {section("question", <p>{text.question.join(" ")}</p>)}
      {section("bids", <LetteredList lines={text.bids} plate={plate} />)}
      {section("gates", <p>{text.gates.join(" ")}</p>)}
      {section("deciding", <DecidingTable project={id} text={text} plate={plate} />)}
      <div className={styles.secondSheet}>
        {section("firmness", <p>{text.firmness.join(" ")}</p>)}
        {section(
          "unknown",
          text.notKnown.length === 0 ? (
            <p>Every figure that counts is shown with the proof asked for.</p>
          ) : (
            <LetteredList lines={text.notKnown} plate={plate} />
          ),
        )}
        <Dissents dissents={dissents} />
        {section("counting", <p>{text.conventions}</p>)}
        {section("asking", <QuestionsByBid ask={text.ask} plate={plate} />)}
        <div className={styles.signatures} aria-hidden="true">
          <p>For the owner</p>
          <p>Date</p>
        </div>
      </div>
    </article>
  );
}

/** The ways to take the paper along and to write into it, and how hard it is to read. */
function PaperWays({ project, grade }: { project: string; grade: number | null }) {
  return (
    <p className="soft screen-only">
      Take it along as <a href={`/project/${project}/recommendation/paper?as=pdf`}>PDF</a> or{" "}
      <a href={`/project/${project}/recommendation/paper?as=docx`}>DOCX</a>, or{" "}
      <Link href={`/project/${project}/recommendation/words`} prefetch={false}>
        write in your own words
      </Link>
      .{grade === null ? null : ` The paper ${gradeWords(grade)}`}
    </p>
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
