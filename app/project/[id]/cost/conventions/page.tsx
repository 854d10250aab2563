import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "../../../../_components/page-head";
import { loadProject } from "../../../../_data/load-project";
import { ConventionsList } from "../_components/conventions-list";
import { CostPages } from "../_components/cost-pages";

export const metadata: Metadata = { title: "How cost is counted" };

export default async function ConventionsPage({ params }: PageProps<"/project/[id]/cost/conventions">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  return (
    <>
      <PageHead
        title="How cost is counted"
        decide="By which rules every bid is costed alike, so that anybody can follow the figures and redo them."
      />
      <CostPages project={id} here="conventions" />
      <ConventionsList project={id} conventions={loaded.project.brief.money} />
    </>
  );
}
