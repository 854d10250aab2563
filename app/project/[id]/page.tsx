import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "../../_components/page-head";
import { loadProject } from "../../_data/load-project";
import { contents } from "./_contents";
import styles from "./page.module.css";

export default async function ProjectPage({ params }: PageProps<"/project/[id]">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  return (
    <>
      <PageHead
        title={loaded.project.brief.name}
        decide="The pages stand in the order of the job. Open the one you need."
      />
      <ol className={styles.contents}>
        {contents.map(({ slug, title, decide }) => (
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
