import Link from "next/link";
import { notFound } from "next/navigation";
import { formFileBytes } from "#lib/document";
import { intervalOfFigure } from "#lib/figure";
import { arePricesSealed, dayOf } from "#lib/procedure";
import { BidLetter } from "../../../../../_components/bid-letter";
import { PageHead } from "../../../../../_components/page-head";
import { currentActor } from "../../../../../_data/actor";
import { loadEvaluation } from "../../../../../_data/load-project";
import { SealFormFile } from "./_components/seal-form-file";
import { SealedPricesForm } from "./_components/sealed-prices-form";

export const metadata = { title: "Sealed prices" };

/** Takes prices in and shows none: what was sealed before is not here, whoever asks. */
export default async function SealedPricesPage({ params }: PageProps<"/project/[id]/bids/[bid]/sealed-prices">) {
  const { id, bid } = await params;
  const loaded = await loadEvaluation(id);
  const index = loaded?.project.bids.findIndex((each) => each.id === bid) ?? -1;
  const standing = loaded?.project.bids[index];
  if (loaded === null || standing === undefined) notFound();
  const { project, evaluation, documents, procedure } = loaded;
  const sealed = documents.sealedPrices.find((each) => each.id === bid);
  const { acts } = await currentActor(id);
  const area = intervalOfFigure(evaluation.area)?.low;
  if (area === undefined) throw new RangeError("a field without an area: its schema let it through");
  return (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/bids/${bid}`}>
          <BidLetter letter={standing.letter} index={index} /> {standing.bidder}
        </Link>
      </p>
      <PageHead
        title={`Sealed prices of bid ${standing.letter}`}
        decide="Prices go in here and are locked at once. Nobody reads them before all prices are opened together."
      />
      {sealed === undefined ? (
        <p>No prices of this bid are sealed yet.</p>
      ) : (
        <p>
          Prices of this bid were sealed on {dayOf(sealed.model.at)} by {sealed.model.by.name}. They are not shown here,
          not even to whoever entered them. What you seal now takes their place.
        </p>
      )}
      {arePricesSealed(procedure) && acts.includes("enter-bids") ? (
        <>
          <p>
            A paper that shows these prices is no attachment yet: whoever opens it would read them. Add it once prices
            are open.
          </p>
          <h2 id="file">From a filled bid form</h2>
          <SealFormFile project={id} bid={bid} mostBytes={formFileBytes} />
          <h2 id="typed">Typed in</h2>
          <p>
            What you type stands on this page alone until you seal it: it is not saved by itself, and leaving the page
            loses it.
          </p>
          <SealedPricesForm project={id} bid={bid} costing={{ area, conventions: project.brief.money }} />
        </>
      ) : (
        <p>
          {arePricesSealed(procedure)
            ? "Entering prices is not among your roles."
            : "Prices of this project are not sealed: they stand in the bid."}
        </p>
      )}
    </>
  );
}
