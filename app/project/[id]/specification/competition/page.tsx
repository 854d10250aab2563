import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { UnitSystem } from "#lib/quantity";
import { competitionSentences, limitInWords, type Requirement } from "#lib/requirement";
import { PageHead } from "../../../../_components/page-head";
import { readersUnits } from "../../../../_units";
import { SpecificationPages } from "../_components/specification-pages";
import { type Addresses, addressesOf } from "../_drafted/addresses";
import { type LoadedSection, loadSection } from "../_drafted/load-section";
import { specificationStart } from "../_drafted/specification-start";
import { askedOf, type SystemQuestions } from "./_components/asked-of";
import { CompetitionTable } from "./_components/competition-table";
import { SystemsForm } from "./_components/systems-form";
import { TightCombinations } from "./_components/tight-combinations";
import { WaysToAdmit } from "./_components/ways-to-admit";
import { otherProjects } from "./actions";

export const metadata: Metadata = { title: "Competition" };

export default async function CompetitionPage({ params }: PageProps<"/project/[id]/specification/competition">) {
  const { id } = await params;
  const [loaded, units] = await Promise.all([loadSection(id), readersUnits()]);
  if (loaded === null) notFound();
  const { documents, input } = loaded;
  const addresses = addressesOf(id, documents.requirements.body, input.requirements);
  const questions = questionsOf(loaded);
  return (
    <>
      <PageHead
        title="Competition"
        decide="How many known systems could meet each clause and all of them together, and which limits keep others out."
      />
      <SpecificationPages project={id} here="competition" />
      <p>
        It speaks of the systems known here: the bids, and those entered below. The market may hold others, and a system
        that is not known to fall short may still do so. Figures count as stated, whoever shows them.
      </p>
      <Findings project={id} loaded={loaded} addresses={addresses} units={units} />
      <SystemsForm
        start={await specificationStart(id, documents.specification, askedOf(questions))}
        questions={questions}
        project={id}
        others={await otherProjects(id, "")}
      />
    </>
  );
}

const limitOf = ({ limit, asked }: Requirement) => (limit === null ? asked : limitInWords(limit));

/** What the text asks, as questions to a system. */
function questionsOf({ input, project }: LoadedSection): SystemQuestions {
  const asking = input.requirements.filter(({ limit, asked }) => limit !== null || asked !== "");
  const measures = asking.flatMap((requirement) => {
    const { subject, limit, label } = requirement;
    return subject === null || limit === null ? [] : [{ id: subject.id, label, limit: limitOf(requirement) }];
  });
  return {
    measures: measures.filter(({ id }, index) => measures.findIndex((other) => other.id === id) === index),
    clauses: asking.flatMap(({ id, label, asked, subject }) => (subject === null ? [{ id, label, asked }] : [])),
    bids: project.bids.map(({ id, letter }) => ({ id, letter })),
  };
}

function Findings({
  project,
  loaded: { competition, setting, input },
  addresses,
  units,
}: {
  project: string;
  loaded: LoadedSection;
  addresses: Addresses;
  units: UnitSystem;
}) {
  if (setting.clauses.length === 0)
    return (
      <p>
        No clause asks for anything yet.{" "}
        <Link href={`/project/${project}/specification/clauses`}>Write the clauses</Link> first.
      </p>
    );
  const ofClause = (id: string) => input.requirements.find((requirement) => requirement.id === id);
  const { clauses: clausesLeft, systems: systemsLeft } = setting.leftOut;
  const label = (id: string) => ofClause(id)?.label ?? id;
  return (
    <>
      <section aria-labelledby="found">
        <h2 id="found">What the check says</h2>
        <ul>
          {competitionSentences(competition, setting, units).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          {clausesLeft === 0 ? null : <li>{clausesLeft} more clauses are left out: the check takes 60 at most.</li>}
          {systemsLeft === 0 ? null : <li>{systemsLeft} more systems are left out: the check takes 60 at most.</li>}
        </ul>
        {setting.systems.length === 0 ? null : (
          <CompetitionTable
            found={competition}
            setting={setting}
            limits={Object.fromEntries(input.requirements.map((requirement) => [requirement.id, limitOf(requirement)]))}
            addressOf={(clause) => addresses.clause(clause)}
          />
        )}
      </section>
      {setting.systems.length === 0 ? null : (
        <>
          <section aria-labelledby="ways">
            <h2 id="ways">What would let more in</h2>
            <WaysToAdmit
              found={competition}
              setting={setting}
              units={units}
              limitAt={(clause) => {
                const criterion = ofClause(clause)?.criterion;
                return criterion
                  ? `/project/${project}/requirements#${criterion.id}`
                  : addresses.clause(clause, "limit");
              }}
            />
          </section>
          <section aria-labelledby="together">
            <h2 id="together">Clauses that are tight together</h2>
            <TightCombinations lattice={competition.lattice} label={label} />
          </section>
        </>
      )}
    </>
  );
}
