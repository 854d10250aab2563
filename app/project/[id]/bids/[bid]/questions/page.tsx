import Link from "next/link";
import { notFound } from "next/navigation";
import { propertyOf } from "#lib/claim";
import { type Answer, answersTo, type Finding, isSettled } from "#lib/crosscheck";
import { letterText, questionsLetter } from "#lib/document";
import { type Bid, claimInWords } from "#lib/evaluation";
import { tell } from "#lib/figure";
import { freezingStep, procedureSentences } from "#lib/procedure";
import { BidLetter } from "../../../../../_components/bid-letter";
import { Caution } from "../../../../../_components/caution";
import { ShowWorking } from "../../../../../_components/working";
import { draftOf } from "../../../../../_data/draft-of";
import { loadEvaluation } from "../../../../../_data/load-project";
import { readersUnits } from "../../../../../_units";
import { CopyText } from "../../../_components/copy-text";
import { severityLabels } from "../_components/severity-labels";
import { AnswerForm, type AskedFinding } from "./_components/answer-form";
import { Answers } from "./_components/answers";
import styles from "./page.module.css";

export async function generateMetadata({ params }: PageProps<"/project/[id]/bids/[bid]/questions">) {
  const { id, bid } = await params;
  const letter = (await loadEvaluation(id))?.project.bids.find((each) => each.id === bid)?.letter;
  return { title: letter === undefined ? "No such bid" : `Questions to bid ${letter}` };
}

export default async function QuestionsPage({ params, searchParams }: PageProps<"/project/[id]/bids/[bid]/questions">) {
  const { id, bid } = await params;
  const { answer: answering, recorded } = await searchParams;
  const loaded = await loadEvaluation(id);
  const index = loaded?.documents.bids.findIndex((each) => each.id === bid) ?? -1;
  const stored = loaded?.documents.bids[index];
  const evaluated = loaded?.evaluation.bids[index];
  const model = loaded?.project.bids[index];
  if (loaded === null || stored === undefined || evaluated === undefined || model === undefined) notFound();
  const units = await readersUnits();
  const where = { project: id, kind: "bid", id: bid } as const;
  const draft = await draftOf(where);
  const { findings, priceFindings, answers, letter } = evaluated;
  const differing = priceFindings.filter(({ severity }) => severity === "differs");
  const { procedure, summary: kept } = loaded;
  const told = freezingStep(procedure) === null ? [] : procedureSentences(procedure, kept.createdAt);
  const text = questionsLetter(loaded.project.brief, evaluated, units, told);
  const gone = answers.filter(({ finding }) => findings.every(({ key }) => key !== finding));
  const open = findings.filter((finding) => !isSettled(finding, answers));
  return (
    <>
      <header className={styles.head}>
        <p className="screen-only">
          <Link href={`/project/${id}/bids`}>Bids</Link> · <Link href={`/project/${id}/bids/${bid}`}>Bid {letter}</Link>
        </p>
        <h1>
          <BidLetter letter={letter} index={index} /> Questions to the bidder
        </h1>
        <p className="lede">{summary(text.questions.length, open.length, findings.length, differing.length)}</p>
      </header>
      {typeof recorded === "string" ? (
        <p role="status" className={styles.recorded}>
          The answer is recorded.{" "}
          {findings.some(({ key }) => key === recorded)
            ? "It stands beside its finding below."
            : "With it the finding is gone; the answer stands at the foot of this page."}
        </p>
      ) : null}
      {draft === null ? null : (
        <p role="status" className={styles.notice}>
          Some entries of this bid can’t be read yet and don’t count, so answers can’t be recorded here.{" "}
          <Link href={`/project/${id}/bids/${bid}`}>Put them right first</Link>.
        </p>
      )}
      <section aria-labelledby="letter">
        <h2 id="letter">The letter</h2>
        {text.questions.length === 0 ? (
          <p>There is nothing to ask: what the criteria ask for is shown, and nothing in the bid contradicts itself.</p>
        ) : (
          <>
            <article className={styles.letter} aria-label={text.heading}>
              <h3>{text.heading}</h3>
              <dl>
                {text.lines.map(({ label, text: line }) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd>{line}</dd>
                  </div>
                ))}
              </dl>
              {text.opening.map((paragraph) => (
                <p key={paragraph}>{paragraph}</p>
              ))}
              <ol>
                {text.questions.map(({ text: question }) => (
                  <li key={question}>{question}</li>
                ))}
              </ol>
              {text.closing.map((paragraph) => (
                <p key={paragraph}>{paragraph}</p>
              ))}
            </article>
            <CopyText text={letterText(text)} what="the letter" />
          </>
        )}
      </section>
      <section aria-labelledby="findings">
        <h2 id="findings">Findings and answers</h2>
        {findings.length === 0 ? (
          <p>{contradictsNothing(differing.length)} That does not mean that every claim is shown.</p>
        ) : (
          <p>
            An answer is recorded beside the finding it answers. If it changes a claim, the bid is worked out anew with
            the later figure, and the earlier one stays in the record.
          </p>
        )}
        <ol className={styles.findings}>
          {findings.map((finding) => (
            <li key={finding.key} id={finding.key}>
              <h3>{finding.title}</h3>
              <p className={finding.severity === "can't be true" ? styles.trouble : styles.severity}>
                {severityLabels[finding.severity]}
                {isSettled(finding, answers) ? ", settled by an answer" : ""}
              </p>
              <p>{tell(finding.sentence, units)}</p>
              <ShowWorking project={id} of={finding.title} working={finding.working} />
              <Answers answers={answersTo(finding, answers)} bid={model} />
              {draft !== null ? null : answering === finding.key ? (
                <AnswerForm
                  where={where}
                  version={stored.version}
                  bid={stored.body}
                  asked={askedOf(finding, model, tell(finding.question, units))}
                />
              ) : (
                <p className="screen-only">
                  <Link href={`?answer=${encodeURIComponent(finding.key)}#${finding.key}`} prefetch={false}>
                    Record an answer<span className="visually-hidden"> to “{finding.title}”</span>
                  </Link>
                </p>
              )}
            </li>
          ))}
        </ol>
      </section>
      {gone.length === 0 ? null : <Settled answers={gone} bid={model} />}
      {loaded.evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
    </>
  );
}

/** Where no claims contradict each other: whether the figures of the prices do. */
const contradictsNothing = (differing: number): string =>
  differing === 0
    ? "Nothing in the bid as last saved contradicts itself."
    : "No claims of the bid as last saved contradict each other, but figures of its prices do: the letter asks about them, and they are put right in the bid.";

function summary(questions: number, open: number, findings: number, differing: number): string {
  const asked = questions === 1 ? "1 question is open" : `${questions} questions are open`;
  if (findings === 0) return `${asked}. ${contradictsNothing(differing)}`;
  const settled = findings - open;
  const found = findings === 1 ? "1 finding" : `${findings} findings`;
  if (settled === 0) return `${asked}, and no answer is recorded as settled yet.`;
  return `${asked}. Of ${found}, ${settled} ${settled === 1 ? "is" : "are"} settled by an answer.`;
}

const askedOf = ({ key, claims }: Finding, bid: Bid, question: string): AskedFinding => ({
  key,
  question,
  claims: claims.flatMap((id) => {
    const claim = bid.claims.find((candidate) => candidate.id === id);
    return claim === undefined ? [] : [{ id, label: `${propertyOf(claim.property).label}, ${claimInWords(claim)}` }];
  }),
});

/** Answers to findings that are no longer found, mostly because the answer put the claim right. */
function Settled({ answers, bid }: { answers: readonly Answer[]; bid: Bid }) {
  return (
    <section aria-labelledby="no-longer-found">
      <h2 id="no-longer-found">Answered, and no longer found</h2>
      {answers.map((answer) => (
        <div key={answer.id}>
          <p>{answer.asked}</p>
          <Answers answers={[answer]} bid={bid} />
        </div>
      ))}
    </section>
  );
}
