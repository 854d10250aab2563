import Link from "next/link";
import { notFound } from "next/navigation";
import { awardedBid, projectRequirements } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { byUrgency, registerLine, registerSentence, reviewCaution, startingContract } from "#lib/submittal";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { loadProject } from "../../../_data/load-project";
import { AfterRemoval } from "../_components/after-removal";
import { pageOf } from "../_contents";
import { AddLine } from "./_components/add-line";
import { MakeRegister } from "./_components/make-register";
import { RegisterTable } from "./_components/register-table";
import { SubmittalPages } from "./_components/submittal-pages";
import { lackingLines } from "./_register/lacking-lines";
import { restoreLine } from "./actions";

export const metadata = { title: "Submittals" };

export default async function SubmittalsPage({ params, searchParams }: PageProps<"/project/[id]/submittals">) {
  const [{ id }, asked] = await Promise.all([params, searchParams]);
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project } = loaded;
  const { submittals = [], contract = startingContract } = project;
  const today = plainDate(new Date().toISOString().slice(0, 10));
  const lines = submittals.map((item) => registerLine(item, today, contract.reviewDays));
  const lacking = lackingLines(project).length;
  return (
    <>
      <PageHead {...pageOf("submittals")} />
      <SubmittalPages project={id} here="register" />
      <Caution>{reviewCaution}</Caution>
      <AwardSentence id={id} award={awardedBid(project)} />
      <AfterRemoval
        project={id}
        what="line"
        asked={asked}
        standing={submittals.map((each) => each.id)}
        restore={restoreLine}
      />
      {lines.length === 0 ? (
        <p>
          The register is empty. It is made from the specification: each clause says which reports, samples and drawings
          it wants.
        </p>
      ) : (
        <>
          <p>
            As of {today}: {registerSentence(lines)}
          </p>
          <RegisterTable
            project={id}
            lines={byUrgency(lines)}
            requirements={projectRequirements(project.requirements)}
          />
        </>
      )}
      {lacking === 0 ? (
        lines.length === 0 ? (
          <p>
            No clause asks for a submittal yet.{" "}
            <Link href={`/project/${id}/specification/clauses`}>Say in the clauses what is to be handed in</Link>.
          </p>
        ) : null
      ) : (
        <MakeRegister project={id} lacking={lacking} />
      )}
      <section aria-labelledby="by-hand" className="screen-only">
        <h2 id="by-hand">Add a line by hand</h2>
        <AddLine project={id} />
      </section>
    </>
  );
}

function AwardSentence({ id, award }: { id: string; award: ReturnType<typeof awardedBid> }) {
  const link = <Link href={`/project/${id}/submittals/award`}>Say whose bid was taken</Link>;
  if (award === null)
    return (
      <p>Nobody has said yet whose bid was taken, so submittals are held against the specification alone. {link}.</p>
    );
  return (
    <p>
      Submittals are held against the specification and against bid {award.bid.letter}, by {award.by}.
    </p>
  );
}
