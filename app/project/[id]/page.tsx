import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "../../_components/page-head";
import { currentAsker } from "../../_data/asker";
import { loadProject } from "../../_data/load-project";
import { contents } from "./_contents";
import styles from "./page.module.css";

export default async function ProjectPage({ params }: PageProps<"/project/[id]">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const asker = await currentAsker();
  const released = asker.kind === "link" ? asker.parts : null;
  return (
    <>
      <PageHead
        title={loaded.project.brief.name}
        decide="The pages stand in the order of the job. Open the one you need."
      />
      <ol className={styles.contents}>
        {contents
          .filter(({ slug }) => released === null || released.some((part) => part === slug))
          .map(({ slug, title, decide }) => (
            <li key={slug}>
              <Link href={`/project/${id}/${slug}`} prefetch={false}>
                {title}
              </Link>
              <p>{decide}</p>
            </li>
          ))}
      </ol>
    </>
  );
}
