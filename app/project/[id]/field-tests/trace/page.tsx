import Link from "next/link";
import { notFound } from "next/navigation";
import { impactCaution } from "#lib/impact";
import { Caution } from "../../../../_components/caution";
import { PageHead } from "../../../../_components/page-head";
import { loadProject } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { TraceReader } from "./_components/trace-reader";

export const metadata = { title: "Trace of a drop" };

export default async function TracePage({ params }: PageProps<"/project/[id]/field-tests/trace">) {
  const { id } = await params;
  if ((await loadProject(id)) === null) notFound();
  return (
    <>
      <p>
        <Link href={`/project/${id}/field-tests`} className="screen-only">
          Field tests
        </Link>
      </p>
      <PageHead
        title="Trace of a drop"
        decide="What the acceleration of one drop tells: level, duration, speeds, penetration, and whether they fit the drop height."
      />
      <p>
        The file is read and worked out here in the browser. It never leaves it and is not kept; load it again next
        time.
      </p>
      <Caution>{impactCaution}</Caution>
      <TraceReader project={id} units={await readersUnits()} />
    </>
  );
}
