import Link from "next/link";
import { notFound } from "next/navigation";
import { type Scoring, scoringOf, spreads, startingCommittee } from "#lib/committee";
import { explainAgreement } from "#lib/criteria";
import { dayOf } from "#lib/procedure";
import { PageHead } from "../../../_components/page-head";
import { Scroller } from "../../../_components/scroller";
import { currentActor } from "../../../_data/actor";
import { loadProject } from "../../../_data/load-project";
import { pageOf } from "../_contents";
import { OpenSheetsForm } from "./_components/open-sheets-form";
import { LevelList } from "./_components/rated-criteria";

export const metadata = { title: "Committee" };

export default async function CommitteePage({ params }: PageProps<"/project/[id]/committee">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const { committee = startingCommittee, people = [] } = project;
  const rated = project.requirements.criteria.filter(({ valueFunction }) => valueFunction.kind === "rating");
  const scoring = scoringOf(
    people,
    documents.scoresheets.map(({ model }) => model),
    committee,
  );
  const actor = await currentActor(id);
  const bids = project.bids.map((bid) => bid.id);
  return (
    <>
      <PageHead {...pageOf("committee")} />
      {rated.length === 0 ? <NothingRated project={id} /> : null}
      {rated.length > 0 && scoring.stage === "nobody-listed" ? (
        <p>
          Nobody on the list is an evaluator yet.{" "}
          <Link href={`/project/${id}/procedure/people`} prefetch={false}>
            List the people
          </Link>{" "}
          and give those who rate the role “evaluator”.
        </p>
      ) : null}
      {rated.length > 0 && scoring.stage !== "nobody-listed" ? (
        <>
          <h2 id="sheets">Scoresheets</h2>
          <p>{scoringInWords(scoring)}</p>
          <SheetsTable scoring={scoring} />
          <p className="soft">
            Names are taken on trust on this computer. A sheet that is handed in is sealed: neither a page nor a file
            nor the record shows what it says before all of them are opened.
          </p>
          {scoring.stage !== "opened" && actor.acts.includes("score") ? (
            <p className="screen-only">
              <Link href={`/project/${id}/committee/scoresheet`} className="button primary" prefetch={false}>
                Your scoresheet, {actor.name}
              </Link>
            </p>
          ) : null}
          {scoring.stage === "all-in" && actor.acts.includes("agree") ? <OpenSheetsForm project={id} /> : null}
          {scoring.stage === "opened" ? (
            <>
              <h2 id="agreement">How far they agree</h2>
              <ul>
                {spreads(committee, rated, bids).map(({ criterion, agreement, bids: rows }) => (
                  <li key={criterion.id}>
                    <strong>{criterion.label}:</strong> {explainAgreement(agreement)}{" "}
                    {agreedInWords(rows.filter(({ agreed }) => agreed !== null).length, rows.length)}
                  </li>
                ))}
              </ul>
              <p className="screen-only">
                <Link href={`/project/${id}/committee/consensus`} className="button primary" prefetch={false}>
                  The consensus sheet
                </Link>
              </p>
            </>
          ) : null}
        </>
      ) : null}
      {rated.length === 0 ? null : <h2 id="rated">What is rated</h2>}
      {rated.map((criterion) => (
        <section key={criterion.id} aria-labelledby={`rated-${criterion.id}`}>
          <h3 id={`rated-${criterion.id}`}>{criterion.label}</h3>
          <p>{criterion.reason}</p>
          <LevelList criterion={criterion} />
        </section>
      ))}
    </>
  );
}

const agreedInWords = (agreed: number, all: number): string =>
  agreed === all ? "A value is agreed for every bid." : `Values are agreed for ${agreed} of ${all} bids.`;

function scoringInWords({ stage, handedIn, awaited }: Scoring): string {
  const all = handedIn.length + awaited.length;
  switch (stage) {
    case "nobody-listed":
      return "";
    case "scoring":
      return `Each evaluator scores alone. ${handedIn.length} of ${all} sheets are handed in; nobody sees another’s before all are in.`;
    case "all-in":
      return "All sheets are in. They can be opened together; until then an evaluator may still hand in a changed one.";
    case "opened":
      return "The sheets are open to everybody, as they were handed in, and can’t be changed any more.";
  }
}

function SheetsTable({ scoring: { stage, handedIn, awaited } }: { scoring: Scoring }) {
  return (
    <Scroller label="Scoresheets">
      <table>
        <caption className="visually-hidden">Scoresheets</caption>
        <thead>
          <tr>
            <th scope="col">Evaluator</th>
            <th scope="col">Sheet</th>
          </tr>
        </thead>
        <tbody>
          {handedIn.map(({ id, name, at }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>
                handed in on {dayOf(at)}, {stage === "opened" ? "open" : "sealed"}
              </td>
            </tr>
          ))}
          {awaited.map(({ id, name }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>awaited</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}

function NothingRated({ project }: { project: string }) {
  return (
    <p>
      No criterion is rated by people. What can be measured is better measured; for what can’t, such as a plan for care
      or how a firm proves that it has built such fields,{" "}
      <Link href={`/project/${project}/requirements`} prefetch={false}>
        add a criterion with the measure “Rating by evaluators”
      </Link>{" "}
      and describe its levels. Evaluators then score alone here, and agree afterwards.
    </p>
  );
}
