import Link from "next/link";
import { notFound } from "next/navigation";
import { actRefused } from "#lib/people";
import { releaseParts, releaseState } from "#lib/release";
import { PageHead } from "../../../../_components/page-head";
import { ReplyForm } from "../../../../_components/reply-form";
import { Scroller } from "../../../../_components/scroller";
import { currentActor } from "../../../../_data/actor";
import { installation } from "../../../../_data/installation";
import { loadProject } from "../../../../_data/load-project";
import { releaseToPublic, takeBackRelease } from "./actions";

export const metadata = { title: "Released to the public" };

const states = { open: "open", ended: "ended", "taken-back": "taken back" } as const;

export default async function ReleasedPage({ params }: PageProps<"/project/[id]/procedure/released">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const refused = actRefused(await currentActor(id), "list-people");
  const now = new Date().toISOString();
  const { releases } = loaded.documents;
  return (
    <>
      <p className="screen-only">
        <Link href={`/project/${id}/procedure`}>Procedure</Link>
      </p>
      <PageHead
        title="Released to the public"
        decide="Which parts of the project anybody may read who has a link, until when, and who gave it out."
      />
      {installation().mode === "local" ? (
        <p>
          Evenfield runs on this one computer, where no other person can follow a link. On a server on which people sign
          in, parts of a project are released here. To hand something out now, print a page or save the paper for the
          board.
        </p>
      ) : (
        <>
          <p>
            A link opens the parts that it names, as they stand on the day they are read, and nothing else: no forms, no
            prices before they are opened, no scoresheets before they are handed in. It takes no password, so whoever it
            is passed on to reads the same. It can be taken back at any time.
          </p>
          {releases.length === 0 ? (
            <p>Nothing was released yet.</p>
          ) : (
            <Scroller label="Links that were given out">
              <table>
                <caption className="visually-hidden">Links that were given out</caption>
                <thead>
                  <tr>
                    <th scope="col">For</th>
                    <th scope="col">Opens</th>
                    <th scope="col">Until the end of</th>
                    <th scope="col">Is</th>
                    {refused === null ? <th scope="col">Change</th> : null}
                  </tr>
                </thead>
                <tbody>
                  {releases.map(({ id: release, model }) => (
                    <tr key={release}>
                      <th scope="row">{model.label}</th>
                      <td>{model.parts.map((part) => releaseParts[part]).join("; ")}</td>
                      <td>{new Date(Date.parse(model.endsAt) - 1).toISOString().slice(0, 10)} UTC</td>
                      <td>{states[releaseState(model, now)]}</td>
                      {refused === null ? (
                        <td>
                          {releaseState(model, now) === "open" ? (
                            <ReplyForm
                              action={takeBackRelease.bind(null, id, release)}
                              label={`Take back: ${model.label}`}
                              button="Take back"
                              fields={[]}
                              isPlain
                            />
                          ) : null}
                        </td>
                      ) : null}
                    </tr>
                  ))}
                </tbody>
              </table>
            </Scroller>
          )}
          <section aria-labelledby="new">
            <h2 id="new">Make a link</h2>
            {refused === null ? (
              <ReplyForm
                action={releaseToPublic.bind(null, id)}
                label="Make a link"
                button="Release these parts"
                fields={[
                  { name: "label", label: "For whom or what", hint: "Such as “board meeting of May”.", longest: 120 },
                  { name: "lastDay", label: "Last day", type: "date" },
                ]}
                choice={{
                  ...{ name: "part", legend: "Parts", choose: "several" },
                  choices: Object.entries(releaseParts).map(([value, label]) => ({ value, label })),
                }}
              />
            ) : (
              <p>{refused}</p>
            )}
          </section>
        </>
      )}
    </>
  );
}
