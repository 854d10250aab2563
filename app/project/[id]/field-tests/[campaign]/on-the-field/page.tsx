import Link from "next/link";
import { notFound } from "next/navigation";
import type { CampaignText } from "#lib/evaluation";
import { draftOf } from "../../../../../_data/draft-of";
import { loadProject } from "../../../../../_data/load-project";
import { dateInWords, kindWords } from "../../_tests/campaign-words";
import { FieldEntry } from "./_components/field-entry";

export const metadata = { title: "On the field" };

/** For the person with the missile: one location at a time, with or without a connection. */
export default async function OnTheFieldPage({
  params,
}: PageProps<"/project/[id]/field-tests/[campaign]/on-the-field">) {
  const { id, campaign } = await params;
  const stored = (await loadProject(id))?.documents.campaigns.find((each) => each.id === campaign);
  if (stored === undefined) notFound();
  const where = { project: id, kind: "campaign", id: campaign } as const;
  return (
    <>
      <p>
        <Link href={`/project/${id}/field-tests/${campaign}`} prefetch={false} className="screen-only">
          {kindWords[stored.model.kind]}, {dateInWords(stored.model.date)}
        </Link>
      </p>
      <h1>On the field</h1>
      <FieldEntry
        where={where}
        version={stored.version}
        values={stored.body}
        draft={await draftOf<CampaignText>(where)}
      />
    </>
  );
}
