import Link from "next/link";
import { notFound } from "next/navigation";
import type { MoneyFinding } from "#lib/cost";
import type { Finding, Severity } from "#lib/crosscheck";
import { BidLetter } from "../../../_components/bid-letter";
import { PageHead } from "../../../_components/page-head";
import { currentEditor } from "../../../_data/editor";
import { loadEvaluation } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { AfterRemoval } from "../_components/after-removal";
import { pageOf } from "../_contents";
import { AddBid } from "./_components/add-bid";
import { WhatIsChecked } from "./_components/what-is-checked";
import { nextLetter } from "./_letters";
import { removeBid, restoreBid } from "./actions";
import styles from "./page.module.css";

export const metadata = { title: "Bids" };

/** One finding and several, in words. */
const severityWords: Record<Severity | MoneyFinding["severity"], readonly [string, string]> = {
  "can't be true": ["1 pair of statements can’t both be true", "pairs of statements can’t both be true"],
  "needs an answer": ["1 point needs an answer", "points need an answer"],
  differs: ["1 figure of its prices does not agree with another", "figures of its prices do not agree with others"],
  note: ["1 note", "notes"],
};

function findingsInWords(findings: readonly (Finding | MoneyFinding)[]): string {
  const counts = (Object.keys(severityWords) as (keyof typeof severityWords)[]).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    const [one, several] = severityWords[severity];
    return count === 0 ? [] : [count === 1 ? one : `${count} ${several}`];
  });
  return counts.length === 0 ? "Nothing in it contradicts itself." : `${counts.join(", ")}.`;
}

export default async function BidsPage({ params, searchParams }: PageProps<"/project/[id]/bids">) {
  const { id } = await params;
  const asked = await searchParams;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { evaluation, documents } = loaded;
  const drafts = await (await projectStore()).drafts.list(id, await currentEditor());
  const drafted = new Map(drafts.filter(({ kind }) => kind === "bid").map((draft) => [draft.id, draft.basedOnVersion]));
  const { number, title, decide } = pageOf("bids");
  const letters = documents.bids.map(({ model }) => model.letter);
  return (
    <>
      <PageHead number={number} title={title} decide={decide} />
      <AfterRemoval
        project={id}
        what="bid"
        asked={asked}
        standing={documents.bids.map((bid) => bid.id)}
        restore={restoreBid}
      />
      {evaluation.bids.length === 0 ? (
        <p>
          There is no bid yet. Add the first by its bidder’s name, then enter what the bid says, word for word. What to
          ask of every bid stands in the <Link href={`/project/${id}/requirements`}>Requirements</Link>.
        </p>
      ) : null}
      <ol className={styles.bids}>
        {evaluation.bids.map(({ id: bid, letter, bidder, system, reading, findings, priceFindings }, index) => {
          const found = [...findings, ...priceFindings];
          const version = documents.bids[index]?.version;
          return (
            <li key={bid} id={bid}>
              <h2>
                <BidLetter letter={letter} index={index} />
                <Link href={`/project/${id}/bids/${bid}`}>{bidder}</Link>
              </h2>
              <p className={styles.system}>{system}</p>
              <p>{reading.sentence}</p>
              <p>
                {findingsInWords(found)}
                {found.length === 0 ? null : (
                  <>
                    {" "}
                    <Link href={`/project/${id}/bids/${bid}#findings`} className="screen-only">
                      Findings and questions<span className="visually-hidden"> of bid {letter}</span>
                    </Link>
                  </>
                )}
              </p>
              {drafted.get(bid) === version ? (
                <p className={styles.draft}>
                  A draft of this bid holds entries that can’t be read yet and don’t count.
                </p>
              ) : null}
              <form action={removeBid} className="screen-only">
                <input type="hidden" name="project" value={id} />
                <input type="hidden" name="bid" value={bid} />
                <input type="hidden" name="version" value={version} />
                <button type="submit" className="plain">
                  Remove bid {letter}
                </button>
              </form>
            </li>
          );
        })}
      </ol>
      <section aria-labelledby="add">
        <h2 id="add" className="screen-only">
          Add a bid
        </h2>
        <AddBid project={id} letter={nextLetter(letters)} />
        <p className="screen-only">
          <Link href={`/project/${id}/bid-form/import`}>Add bid {nextLetter(letters)} from a filled form</Link>
        </p>
      </section>
      <section aria-labelledby="bid-form" className="screen-only">
        <h2 id="bid-form">Bid form</h2>
        <p>
          A workbook that bidders fill: what the criteria ask for first, then every other property, the infill and the
          prices. A filled form is shown cell by cell before it becomes a bid.
        </p>
        <p>
          <a href={`/project/${id}/bid-form`} className="button" download>
            Save the blank bid form
          </a>
        </p>
      </section>
      <WhatIsChecked />
      <section aria-labelledby="file" className="screen-only">
        <h2 id="file">Keep a copy</h2>
        <p>
          The project file holds brief, requirements and all bids as text. Open it on another computer from the first
          page, or archive it with the award.
        </p>
        <p>
          <a href={`/project/${id}/export`} className="button" download>
            Save the project file
          </a>
        </p>
        <p>
          <a href={`/project/${id}/claims`} download>
            Save the claims of all bids for a spreadsheet
          </a>
        </p>
      </section>
    </>
  );
}
