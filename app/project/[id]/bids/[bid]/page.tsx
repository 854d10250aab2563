import Link from "next/link";
import { notFound } from "next/navigation";
import { type Claim, propertyOf } from "#lib/claim";
import { claimInWords } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { infillMaterials } from "#lib/material";
import { arePricesSealed } from "#lib/procedure";
import { BidLetter } from "../../../../_components/bid-letter";
import { Caution } from "../../../../_components/caution";
import type { Choice } from "../../../../_components/form/choice-field";
import { bidDraft } from "../../../../_data/draft-of";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersNames } from "../../../../_names";
import { readersUnits } from "../../../../_units";
import { documentAddress } from "../../_components/paper/document-address";
import { BidForm } from "./_components/bid-form";
import { FindingsSection } from "./_components/findings-section";
import styles from "./page.module.css";

export async function generateMetadata({ params }: PageProps<"/project/[id]/bids/[bid]">) {
  const { id, bid } = await params;
  const letter = (await loadEvaluation(id))?.project.bids.find((each) => each.id === bid)?.letter;
  return { title: letter === undefined ? "No such bid" : `Bid ${letter}` };
}

const classLabels = { mineral: "Mineral", polymer: "Polymer", organic: "Organic", blend: "Blend" } as const;

export default async function BidPage({ params }: PageProps<"/project/[id]/bids/[bid]">) {
  const { id, bid } = await params;
  const loaded = await loadEvaluation(id);
  const index = loaded?.documents.bids.findIndex((each) => each.id === bid) ?? -1;
  const stored = loaded?.documents.bids[index];
  const evaluated = loaded?.evaluation.bids[index];
  const model = loaded?.project.bids[index];
  if (loaded === null || stored === undefined || evaluated === undefined || model === undefined) notFound();
  const { project, evaluation, documents } = loaded;
  const where = { project: id, kind: "bid", id: bid } as const;
  const area = intervalOfFigure(evaluation.area)?.low;
  if (area === undefined) throw new RangeError("a field without an area: its schema let it through");
  const materials: readonly Choice[] = [
    ...project.brief.ownMaterials.map(({ id: value, label }) => ({ value, label, group: "From the brief" })),
    ...infillMaterials.map(({ id: value, label, class: kind }) => ({ value, label, group: classLabels[kind] })),
  ];
  const { reading, findings, priceFindings } = evaluated;
  const papers = { project: id, attachments: project.attachments ?? [], owners: [{ kind: "bid", bid } as const] };
  const opens = (claim: Claim) => documentAddress(papers, claim);
  return (
    <>
      <header className={styles.head}>
        <p>
          <Link href={`/project/${id}/bids`} className="screen-only">
            Bids
          </Link>
        </p>
        <h1>
          <BidLetter letter={evaluated.letter} index={index} /> {evaluated.bidder}
        </h1>
        <p className="lede">{reading.sentence}</p>
        {reading.remarks.length === 0 ? null : <p>{reading.remarks.join(" ")}</p>}
        <p className="row screen-only">
          <Link href={`/project/${id}/bids/${bid}/import`}>Import a filled form</Link>
          <a href={`/project/${id}/claims?bid=${encodeURIComponent(bid)}`} download>
            Save the claims for a spreadsheet
          </a>
        </p>
      </header>
      <BidForm
        where={where}
        version={stored.version}
        values={stored.body}
        draft={await bidDraft(id, bid)}
        materials={materials}
        sealed={arePricesSealed(loaded.procedure) ? `/project/${id}/bids/${bid}/sealed-prices` : null}
        wanted={[...reading.shown, ...reading.said, ...reading.missing]}
        costing={{ area, conventions: project.brief.money }}
        names={await readersNames()}
        otherLetters={documents.bids.filter((each) => each.id !== bid).map(({ model }) => model.letter)}
      />
      <FindingsSection
        findings={findings}
        priceFindings={priceFindings}
        units={await readersUnits()}
        letter={evaluated.letter}
        questions={`/project/${id}/bids/${bid}/questions`}
      />
      {model.claims.length === 0 ? null : (
        <section aria-labelledby="in-words">
          <h2 id="in-words">The claims in words</h2>
          <p>As last saved: figure, test method, state of the surface, proof, document and page.</p>
          <dl className={styles.words}>
            {model.claims.map((claim) => (
              <div key={claim.id}>
                <dt>{propertyOf(claim.property).label}</dt>
                <dd>
                  {claimInWords(claim)}
                  {opens(claim) === null ? null : (
                    <a
                      href={opens(claim) ?? ""}
                      target="_blank"
                      rel="noopener"
                      className={`${styles.paper} screen-only`}
                    >
                      Open the document<span className="visually-hidden"> in another tab</span>
                    </a>
                  )}
                  {claim.words === "" || claim.value.kind === "words" ? null : <q>{claim.words}</q>}
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
    </>
  );
}
