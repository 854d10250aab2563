import Link from "next/link";
import { notFound } from "next/navigation";
import { ClosedKinds } from "../../_components/form/closed";
import { MoneyIn } from "../../_components/form/money-of";
import { NamesSwitch } from "../../_components/names-switch";
import { UnitsSwitch } from "../../_components/units-switch";
import { currentlyClosed } from "../../_data/actor";
import { currentAsker } from "../../_data/asker";
import { loadProject } from "../../_data/load-project";
import { readersNames } from "../../_names";
import { readersUnits } from "../../_units";
import { ContentsList } from "./_components/contents-list";
import { ProcedureLine } from "./_components/procedure-line";
import { ReadsReleased } from "./_components/reads-released";
import { WhoIsHere } from "./_components/who-is-here";
import { Together } from "./_together/together";
import styles from "./layout.module.css";

export async function generateMetadata({ params }: LayoutProps<"/project/[id]">) {
  const loaded = await loadProject((await params).id);
  return {
    title: {
      default: loaded?.project.brief.name ?? "No such project",
      template: `%s · ${loaded?.project.brief.name ?? ""} · Evenfield`,
    },
  };
}

export default async function ProjectLayout({ params, children }: LayoutProps<"/project/[id]">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const asker = await currentAsker();
  const released = asker.kind === "link" ? asker.parts : null;
  const { brief } = loaded.project;
  const units = await readersUnits();
  return (
    <div className={styles.sheet}>
      <header className={styles.running}>
        <p>
          {released === null ? <Link href="/">Evenfield</Link> : "Evenfield"} ·{" "}
          <Link href={`/project/${id}`}>{brief.name}</Link> · {brief.owner}
        </p>
        {brief.notice === "" ? null : <p className={styles.invented}>{brief.notice}</p>}
        <div className={styles.choices}>
          {asker.kind === "link" ? (
            <ReadsReleased label={asker.label} endsAt={asker.endsAt} />
          ) : (
            <>
              <Together project={id} entries={loaded.summary.record.entries} />
              <WhoIsHere project={id} asker={asker} />
            </>
          )}
          <UnitsSwitch units={units} />
          {loaded.project.bids.length === 0 ? null : <NamesSwitch names={await readersNames()} />}
        </div>
      </header>
      <nav className={`${styles.side} screen-only`} aria-label="Contents">
        <details className={styles.narrowContents}>
          <summary>Contents</summary>
          <ContentsList project={id} released={released} />
        </details>
        <div className={styles.wideContents}>
          <ContentsList project={id} released={released} />
        </div>
      </nav>
      <main id="main" className={styles.main}>
        <ProcedureLine project={id} procedure={loaded.procedure} keptSince={loaded.summary.createdAt} />
        <ClosedKinds kinds={await currentlyClosed(id)}>
          <MoneyIn currency={brief.money.currency}>{children}</MoneyIn>
        </ClosedKinds>
      </main>
    </div>
  );
}
