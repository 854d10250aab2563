import Link from "next/link";
import { notFound } from "next/navigation";
import { localEditor } from "#lib/access";
import type { PeopleText } from "#lib/people";
import { PageHead } from "../../../../_components/page-head";
import { RolesTable } from "../../../../_components/roles-table";
import { currentAsker, people } from "../../../../_data/asker";
import { draftOf } from "../../../../_data/draft-of";
import { currentEditor } from "../../../../_data/editor";
import { loadProject } from "../../../../_data/load-project";
import { PeopleForm } from "./_components/people-form";
import { WhoForm } from "./_components/who-form";

export const metadata = { title: "People and roles" };

const filled = ({ people = [] }: PeopleText) => ({
  people: people.map((person) => ({ ...person, position: person.position ?? "" })),
});

export default async function PeoplePage({ params }: PageProps<"/project/[id]/procedure/people">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { people: listed, scoresheets } = loaded.documents;
  const where = { project: id, kind: "people", id: "people" } as const;
  const draft = await draftOf<PeopleText>(where);
  const asker = await currentAsker();
  const editor = await currentEditor();
  const members =
    asker.kind === "person"
      ? ((await (await people()).organisations.members(loaded.summary.organisation, asker.person.id)) ?? [])
      : null;
  return (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/procedure`}>Procedure</Link>
      </p>
      <PageHead title="People and roles" decide="Who works on this project, and what each of them may do in it." />
      {members === null ? (
        <section aria-labelledby="here">
          <h2 id="here">Who is at this keyboard</h2>
          <p>
            Evenfield runs on this one computer and asks for no password. <strong>Names are taken on trust:</strong>{" "}
            whoever sits here may say that they are somebody else. Roles keep people from changing by mistake what is
            not theirs; they prove nothing about who it was.
          </p>
          <WhoForm
            here={editor.id === localEditor.id ? "" : editor.name}
            listed={(listed?.model.people ?? []).map(({ name }) => name)}
          />
        </section>
      ) : null}
      <section aria-labelledby="list">
        <h2 id="list">People</h2>
        {members === null ? (
          <p>
            As long as nobody is listed, everybody here may do everything but score. Whoever is not on the list may do
            so still, because this computer knows nobody; a person on the list does what their roles allow.
          </p>
        ) : (
          <p>
            Members of <Link href={`/organisation/${loaded.summary.organisation}`}>the organisation</Link> who work on
            this project. Whoever is not listed neither sees nor changes it, but for the organisation’s administrators,
            who may do what the owner’s administrator may. Somebody who is missing here has to be invited first.
          </p>
        )}
        <PeopleForm
          where={where}
          version={listed?.version ?? 0}
          values={filled(listed?.body ?? {})}
          draft={draft && { ...draft, values: filled(draft.values) }}
          fixed={scoresheets.map(({ id: evaluator }) => evaluator)}
          members={members?.map(({ id: member, name }) => ({ id: member, name })) ?? null}
        />
      </section>
      <section aria-labelledby="roles">
        <h2 id="roles">What each role may do</h2>
        <RolesTable />
        <p className="screen-only">
          <Link href="/access" prefetch={false}>
            Who reads and does what, page by page
          </Link>
        </p>
      </section>
    </>
  );
}
