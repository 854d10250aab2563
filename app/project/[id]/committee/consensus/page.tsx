import Link from "next/link";
import { notFound } from "next/navigation";
import { type CommitteeText, type Statement, spreads, startingCommittee } from "#lib/committee";
import { dayOf } from "#lib/procedure";
import { PageHead } from "../../../../_components/page-head";
import { draftOf } from "../../../../_data/draft-of";
import { loadProject } from "../../../../_data/load-project";
import { LevelList } from "../_components/rated-criteria";
import { ConsensusForm } from "./_components/consensus-form";
import { filledConsensus } from "./_components/filled-consensus";
import { RatingsTable } from "./_components/ratings-table";

export const metadata = { title: "Consensus sheet" };

export default async function ConsensusPage({ params }: PageProps<"/project/[id]/committee/consensus">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const { committee = startingCommittee } = project;
  const { opened, sheets } = committee;
  const head = (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/committee`}>Committee</Link>
      </p>
      <PageHead
        title="Consensus sheet"
        decide="How far apart the evaluators are, and on which value they agree, with the reason. The agreed value is the one that scores."
      />
    </>
  );
  if (opened === null)
    return (
      <>
        {head}
        <p>The scoresheets are not open yet. Evaluators score alone first.</p>
      </>
    );
  const where = { project: id, kind: "committee", id: "committee" } as const;
  const draft = await draftOf<CommitteeText>(where);
  const bids = project.bids.map(({ id: bid, letter, bidder }) => ({ id: bid, letter, bidder }));
  const ids = bids.map((bid) => bid.id);
  const rated = project.requirements.criteria.filter(({ valueFunction }) => valueFunction.kind === "rating");
  const rows = spreads(committee, rated, ids);
  const filled = (text: CommitteeText) => filledConsensus(text, rated, ids);
  return (
    <>
      {head}
      <p>
        Opened on {dayOf(opened.at)} by {opened.by.name}. Talk about the reasons where levels lie far apart, and read
        the descriptions together. An agreed value need not be the mean: it is the one that the reasons support.
      </p>
      <Interests
        stated={sheets.map(({ evaluator, sheet }) => ({ name: evaluator.name, statement: sheet.statement }))}
        letterOf={(bid) => bids.find((each) => each.id === bid)?.letter ?? bid}
      />
      <ConsensusForm
        where={where}
        version={documents.committee?.version ?? 0}
        values={filled(documents.committee?.body ?? {})}
        draft={draft && { ...draft, values: filled(draft.values) }}
        criteria={rows.map((row) => ({
          criterion: row.criterion,
          levels: <LevelList criterion={row.criterion} />,
          ratings: <RatingsTable spread={row} bids={bids} />,
        }))}
        bids={bids}
      />
    </>
  );
}

/** The interests that evaluators stated, as a reader of the record will ask for them first. */
function Interests({
  stated,
  letterOf,
}: {
  stated: readonly Readonly<{ name: string; statement: Statement }>[];
  letterOf: (bid: string) => string;
}) {
  return (
    <section aria-labelledby="interests">
      <h2 id="interests">Stated interests</h2>
      <ul>
        {stated.map(({ name, statement }) => (
          <li key={name}>
            {name}: {statementInWords(statement, letterOf)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function statementInWords(statement: Statement, letterOf: (bid: string) => string): string {
  switch (statement.kind) {
    case "none":
      return "no interest in any of the bids.";
    case "some-bids":
      return `an interest in bid${statement.bids.length === 1 ? "" : "s"} ${statement.bids.map(letterOf).join(", ")}, and excused there: ${statement.words}`;
    case "all-bids":
      return `excused from all bids: ${statement.words}`;
  }
}
