import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { LinkRow } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";
import { PageHead } from "../../../../_components/page-head";
import { costingStart } from "../../../../_data/costing-start";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { CostPages } from "../_components/cost-pages";
import { Comparisons } from "./_components/comparisons";
import { OwnersForm } from "./_components/owners-form";
import { filledOwners } from "./_components/owners-values";

export const metadata: Metadata = { title: "Owner’s figures" };

export default async function OwnersFiguresPage({ params }: PageProps<"/project/[id]/cost/owners-figures">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, documents, evaluation } = loaded;
  const units = await readersUnits();
  const bids = evaluation.bids.map(({ id: bid, letter, cost }) => ({
    id: bid,
    letter,
    now: Object.fromEntries(cost.links.map((row) => [row.link, nowInWords(row)])),
  }));
  const filled = (costing: CostingText) => filledOwners(costing, bids);
  return (
    <>
      <PageHead
        title="Owner’s figures"
        decide="What the owner adds to the bidders’ prices from technical figures, and what the bids are compared with."
      />
      <CostPages project={id} here="owners-figures" />
      {bids.length === 0 ? (
        <p>
          There are no bids yet. <Link href={`/project/${id}/bids`}>Add the bids first</Link>.
        </p>
      ) : (
        <>
          <OwnersForm start={await costingStart(id, documents.costing, filled)} bids={bids} />
          <Comparisons project={id} evaluation={evaluation} with={project.costing.comparedWith} units={units} />
        </>
      )}
    </>
  );
}

/** What a link does in a bid now, as last saved. */
function nowInWords(row: LinkRow): string {
  switch (row.kind) {
    case "off":
      return row.note;
    case "computed":
      return `Counted as worked out. ${row.note}`.trim();
    case "stated":
      return `Counted as stated. ${row.note}`.trim();
    case "not-counted":
      return `Not counted. ${row.because}`;
  }
}
