import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { awardedBid } from "#lib/evaluation";
import type { ContractText } from "#lib/submittal";
import { PageHead } from "../../../../_components/page-head";
import { documentStart } from "../../../../_data/document-start";
import { loadProject } from "../../../../_data/load-project";
import { installedChoices } from "../../field-tests/_tests/installed-choices";
import { SubmittalPages } from "../_components/submittal-pages";
import { type ContractValues, filledContract } from "../_register/contract-values";
import { AwardForm } from "./_components/award-form";

export const metadata: Metadata = { title: "What was awarded" };

export default async function AwardPage({ params }: PageProps<"/project/[id]/submittals/award">) {
  const { id } = await params;
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const award = awardedBid(project);
  return (
    <>
      <PageHead
        title="What was awarded"
        decide="Whose bid the work is held against, how close a figure has to come, and how fast submittals are answered."
      />
      <SubmittalPages project={id} here="award" />
      <AwardForm
        start={
          await documentStart<ContractText, ContractValues>(
            { project: id, kind: "contract", id: "contract" },
            documents.contract,
            {},
            filledContract,
          )
        }
        bids={installedChoices(project.bids, project.contract?.bid ?? "")}
        awarded={award?.by === "the award" ? award.bid.letter : null}
      />
    </>
  );
}
