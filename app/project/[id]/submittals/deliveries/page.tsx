import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { awardedBid, deliveredWork } from "#lib/evaluation";
import { findMaterial } from "#lib/material";
import { type DeliveryText, startingDelivery } from "#lib/submittal";
import { Caution } from "../../../../_components/caution";
import { PageHead } from "../../../../_components/page-head";
import { documentStart } from "../../../../_data/document-start";
import { loadProject } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { SubmittalPages } from "../_components/submittal-pages";
import { type DeliveryValues, filledDelivery } from "../_register/delivery-values";
import { DeliveredResults } from "./_components/delivered-results";
import { DeliveryForm } from "./_components/delivery-form";

export const metadata: Metadata = { title: "Deliveries and placing" };

export default async function DeliveriesPage({ params }: PageProps<"/project/[id]/submittals/deliveries">) {
  const [{ id }, units] = await Promise.all([params, readersUnits()]);
  const loaded = await loadProject(id);
  if (loaded === null) notFound();
  const { project, documents } = loaded;
  const components = (awardedBid(project)?.bid.infill.components ?? []).map(({ id: value, material }) => ({
    value,
    label: findMaterial(material, project.brief.ownMaterials)?.label ?? material,
  }));
  return (
    <>
      <PageHead
        title="Deliveries and placing"
        decide="Whether the infill that came is what was bid, how deep it lies, and how seams, lines and base turned out."
      />
      <SubmittalPages project={id} here="deliveries" />
      <Caution>
        Mass and depth say how much lies there, not how the field plays or how hard it is: test the field itself.
      </Caution>
      <DeliveryForm
        start={
          await documentStart<DeliveryText, DeliveryValues>(
            { project: id, kind: "delivery", id: "delivery" },
            documents.delivery,
            {},
            filledDelivery(components.map(({ value }) => value)),
          )
        }
        components={components}
      />
      <DeliveredResults work={deliveredWork(project)} delivery={project.delivery ?? startingDelivery} units={units} />
    </>
  );
}
