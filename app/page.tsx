import Link from "next/link";
import type { SignedIn } from "#lib/store";
import { ImportFile } from "./_components/import-file";
import { InOrganisation } from "./_components/in-organisation";
import { ProjectList, projectsAsked } from "./_components/project-list";
import { SignedInLine } from "./_components/signed-in-line";
import { StartProject } from "./_components/start-project";
import { currentAsker, ownOrganisations } from "./_data/asker";
import { openDemo } from "./actions";
import styles from "./page.module.css";

export default async function Home({ searchParams }: PageProps<"/">) {
  const asker = await currentAsker();
  const own = await ownOrganisations();
  return (
    <main id="main" className={styles.page}>
      {asker.kind === "person" ? <SignedInLine who={asker} /> : null}
      <h1 className={styles.name}>Evenfield</h1>
      <p className="lede">
        Sets competing bids for a synthetic-turf field side by side in one set of units. Shows what each bid proves,
        what it only says and what it leaves out. Works out infill mass, hardness over the years and life-cycle cost,
        and scores every bid against criteria you set beforehand, each figure with its working.
      </p>
      {own.length === 0 ? null : (
        <div className={styles.ways}>
          <section aria-labelledby="look">
            <h2 id="look">Look first</h2>
            <p>
              A made-up school district with four made-up bids of very different kinds. Change anything; open it again
              for a fresh copy.
            </p>
            <form action={openDemo}>
              <InOrganisation organisations={own} id="demo-organisation" />
              <button type="submit" className="primary">
                Open the demonstration project
              </button>
            </form>
          </section>
          <section aria-labelledby="start">
            <h2 id="start">Start your own</h2>
            <StartProject organisations={own} />
          </section>
          <section aria-labelledby="file">
            <h2 id="file">Open a project file</h2>
            <ImportFile organisations={own} />
          </section>
        </div>
      )}
      <section aria-labelledby="projects">
        <h2 id="projects">{asker.kind === "local" ? "Projects on this computer" : "Your projects"}</h2>
        <ProjectList
          asked={projectsAsked(await searchParams)}
          none={
            own.length === 0
              ? "None yet. You see a project here once its list of people names you."
              : "None yet. What you start or open above is kept here."
          }
        />
      </section>
      {asker.kind === "person" ? <Belongings who={asker} /> : null}
    </main>
  );
}

/** The organisations of whoever has signed in, each with its people behind it. */
function Belongings({ who }: { who: SignedIn }) {
  return (
    <section aria-labelledby="organisations">
      <h2 id="organisations">Your organisations</h2>
      <ul>
        {who.organisations.map(({ id, name, administers }) => (
          <li key={id}>
            <Link href={`/organisation/${id}`}>{name}</Link>
            {administers ? ", which you administer: members and invitations" : ""}
          </li>
        ))}
      </ul>
    </section>
  );
}
