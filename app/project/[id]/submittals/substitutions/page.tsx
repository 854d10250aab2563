import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { reviewCaution } from "#lib/submittal";
import { Caution } from "../../../../_components/caution";
import { PageHead } from "../../../../_components/page-head";
import { Scroller } from "../../../../_components/scroller";
import { loadProject } from "../../../../_data/load-project";
import { AfterRemoval } from "../../_components/after-removal";
import { SubmittalPages } from "../_components/submittal-pages";
import { AddSubstitution } from "./_components/add-substitution";
import { restoreSubstitution } from "./actions";

export const metadata: Metadata = { title: "Substitution requests" };

const decisions = { "": "open", accepted: "accepted", rejected: "rejected" } as const;

export default async function SubstitutionsPage({
  params,
  searchParams,
}: PageProps<"/project/[id]/submittals/substitutions">) {
  const [{ id }, asked] = await Promise.all([params, searchParams]);
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { substitutions = [] } = loaded.project;
  return (
    <>
      <PageHead
        title="Substitution requests"
        decide="Whether something else than what was bid may be delivered, and what it would change."
      />
      <SubmittalPages project={id} here="substitutions" />
      <Caution>{reviewCaution}</Caution>
      <AfterRemoval
        project={id}
        what="request"
        asked={asked}
        standing={substitutions.map((each) => each.id)}
        restore={restoreSubstitution}
      />
      {substitutions.length === 0 ? (
        <p>No request was made. The specification says how one is made and what has to come with it.</p>
      ) : (
        <Scroller label="Substitution requests">
          <table>
            <caption className="visually-hidden">Substitution requests</caption>
            <thead>
              <tr>
                <th scope="col">What is to be substituted</th>
                <th scope="col">Requested</th>
                <th scope="col">Decision</th>
                <th scope="col">Decided</th>
              </tr>
            </thead>
            <tbody>
              {substitutions.map(({ id: request, item, requested, decision, decided }) => (
                <tr key={request}>
                  <th scope="row">
                    <Link href={`/project/${id}/submittals/substitutions/${request}`}>{item}</Link>
                  </th>
                  <td>{requested ?? "–"}</td>
                  <td>{decisions[decision]}</td>
                  <td>{decided ?? "–"}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
      <AddSubstitution project={id} />
    </>
  );
}
