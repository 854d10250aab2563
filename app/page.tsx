import { ImportFile } from "./_components/import-file";
import { ProjectList, projectsAsked } from "./_components/project-list";
import { StartProject } from "./_components/start-project";
import { openDemo } from "./actions";
import styles from "./page.module.css";

export default async function Home({ searchParams }: PageProps<"/">) {
  return (
    <main id="main" className={styles.page}>
      <h1 className={styles.name}>Evenfield</h1>
      <p className="lede">
        Sets competing bids for a synthetic-turf field side by side in one set of units. Shows what each bid proves,
        what it only says and what it leaves out. Works out infill mass, hardness over the years and life-cycle cost,
        and scores every bid against criteria you set beforehand, each figure with its working.
      </p>
      <div className={styles.ways}>
        <section aria-labelledby="look">
          <h2 id="look">Look first</h2>
          <p>
            A made-up school district with four made-up bids of very different kinds. Change anything; open it again for
            a fresh copy.
          </p>
          <form action={openDemo}>
            <button type="submit" className="primary">
              Open the demonstration project
            </button>
          </form>
        </section>
        <section aria-labelledby="start">
          <h2 id="start">Start your own</h2>
          <StartProject />
        </section>
        <section aria-labelledby="file">
          <h2 id="file">Open a project file</h2>
          <ImportFile />
        </section>
      </div>
      <section aria-labelledby="projects">
        <h2 id="projects">Projects on this computer</h2>
        <ProjectList
          asked={projectsAsked(await searchParams)}
          none="None yet. What you start or open above is kept here."
        />
      </section>
    </main>
  );
}
