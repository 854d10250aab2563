import Link from "next/link";
import { notFound } from "next/navigation";
import { formFileBytes } from "#lib/document";
import { PageHead } from "../../../../_components/page-head";
import { loadProject } from "../../../../_data/load-project";
import { FormImport } from "../../_components/form-import/form-import";
import { nextLetter } from "../../bids/_letters";

export const metadata = { title: "A new bid from a filled form" };

/** Adds a bid as a filled form gives it. */
export default async function NewBidFromFormPage({ params }: PageProps<"/project/[id]/bid-form/import">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const letter = nextLetter(loaded.project.bids.map((bid) => bid.letter));
  return (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/bids`}>Bids</Link>
      </p>
      <PageHead
        title="A new bid from a filled form"
        decide="What a bidder wrote into the bid form, cell by cell, before any of it becomes a bid."
      />
      <FormImport where={{ project: id, bid: null }} letter={letter} mostBytes={formFileBytes} />
    </>
  );
}
