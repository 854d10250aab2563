import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { reviewedRequirements, type SubstitutionText, substitutionEffects } from "#lib/evaluation";
import { impactCaution } from "#lib/impact";
import { infillMaterials } from "#lib/material";
import { Caution } from "../../../../../_components/caution";
import { PageHead } from "../../../../../_components/page-head";
import { documentStart } from "../../../../../_data/document-start";
import { loadProject } from "../../../../../_data/load-project";
import { readersUnits } from "../../../../../_units";
import { Upload } from "../../../_components/paper/upload";
import { SubmittalPages } from "../../_components/submittal-pages";
import { filledSubstitution, type SubstitutionValues } from "../../_register/substitution-values";
import { removeSubstitution } from "../actions";
import { EffectsSection } from "./_components/effects-section";
import { SubstitutionForm } from "./_components/substitution-form";

type Props = PageProps<"/project/[id]/submittals/substitutions/[request]">;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id, request } = await params;
  const found = (await loadProject(id))?.documents.substitutions.find((each) => each.id === request)?.model;
  return { title: found?.item ?? "No such request" };
}

export default async function SubstitutionPage({ params }: Props) {
  const [{ id, request }, units] = await Promise.all([params, readersUnits()]);
  const loaded = await loadProject(id);
  const stored = loaded?.documents.substitutions.find((each) => each.id === request);
  if (loaded === null || stored === undefined) notFound();
  const { project } = loaded;
  const effects = substitutionEffects(project, { id: request, ...stored.model }, units);
  const limited = reviewedRequirements(project.requirements).flatMap(({ isOn, limit, subject }) =>
    isOn && limit !== null && subject?.property !== undefined ? [subject.property] : [],
  );
  return (
    <>
      <PageHead
        title={stored.model.item}
        decide="How the substitute stands to the clauses and to what was bid, and what it would change."
      />
      <SubmittalPages project={id} here="line" />
      <Caution>{impactCaution}</Caution>
      <SubstitutionForm
        start={
          await documentStart<SubstitutionText, SubstitutionValues>(
            { project: id, kind: "substitution", id: request },
            stored,
            stored.body,
            filledSubstitution,
          )
        }
        materials={[
          { value: "", label: "Choose a material" },
          ...[...infillMaterials, ...project.brief.ownMaterials].map(({ id: value, label }) => ({ value, label })),
        ]}
        proposed={[...new Set(limited)]}
      />
      <Upload
        project={id}
        owner={{ kind: "substitution", substitution: request }}
        label="Add the papers of the request"
      />
      {effects === null ? (
        <p>Nobody has said yet whose bid was taken, so there is nothing to hold the substitute against.</p>
      ) : (
        <EffectsSection effects={effects} />
      )}
      <form action={removeSubstitution} className="screen-only">
        <input type="hidden" name="project" value={id} />
        <input type="hidden" name="request" value={request} />
        <input type="hidden" name="version" value={stored.version} />
        <button type="submit" className="plain">
          Take this request out
        </button>
      </form>
    </>
  );
}
