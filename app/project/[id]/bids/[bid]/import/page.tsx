import Link from "next/link";
import { notFound } from "next/navigation";
import { formFileBytes } from "#lib/document";
import { PageHead } from "../../../../../_components/page-head";
import { loadProject } from "../../../../../_data/load-project";
import { FormImport } from "../../../_components/form-import/form-import";

export const metadata = { title: "Import a filled form" };

/** Lays a filled form over a bid that is there already. */
export default async function ImportFormPage({ params }: PageProps<"/project/[id]/bids/[bid]/import">) {
  const { id, bid } = await params;
  const standing = (await loadProject(id))?.project.bids.find((each) => each.id === bid);
  if (standing === undefined) notFound();
  return (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/bids/${bid}`}>
          Bid {standing.letter}, {standing.bidder}
        </Link>
      </p>
      <PageHead
        title={`Import a filled form into bid ${standing.letter}`}
        decide="What the form adds to the bid and what it changes, cell by cell, before any of it is saved."
      />
      <FormImport where={{ project: id, bid }} letter={standing.letter} mostBytes={formFileBytes} />
    </>
  );
}
