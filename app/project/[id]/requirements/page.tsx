import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { priceLineLabels, type RequirementsText } from "#lib/evaluation";
import { halfInchRule } from "#lib/impact";
import { formatInterval, formatValue, type UnitSystem } from "#lib/quantity";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { draftOf } from "../../../_data/draft-of";
import { loadEvaluation } from "../../../_data/load-project";
import { readersUnits } from "../../../_units";
import { CriterionCurve } from "../_components/criterion-curve";
import { judgedBids } from "../_components/judged-bids";
import { pageOf } from "../_contents";
import { RequirementsForm } from "./_components/requirements-form";
import { withOutlook } from "./_components/with-outlook";

const page = pageOf("requirements");

export const metadata: Metadata = { title: page.title };

export default async function RequirementsPage({ params }: PageProps<"/project/[id]/requirements">) {
  const { id } = await params;
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, documents, evaluation } = loaded;
  const units = await readersUnits();
  const bids = judgedBids(project, evaluation);
  const curves = project.requirements.criteria.flatMap(({ id: criterion, label, measure, valueFunction }, row) =>
    valueFunction.kind === "none"
      ? []
      : [
          [
            criterion,
            <CriterionCurve
              key={criterion}
              row={row}
              rule={valueFunction}
              dimension={measure.dimension}
              name={label}
              caption="As last saved, with the bids that show a figure"
              bids={bids}
              units={units}
            />,
          ] as const,
        ],
  );
  const where = { project: id, kind: "requirements", id: "requirements" } as const;
  const draft = await draftOf<RequirementsText>(where);
  return (
    <>
      <PageHead number={page.number} title={page.title} decide={page.decide} />
      {evaluation.cautions.map((caution) => (
        <Caution key={caution}>{caution}</Caution>
      ))}
      <RequirementsForm
        where={where}
        version={documents.requirements.version}
        values={withOutlook(documents.requirements.body)}
        draft={draft && { ...draft, values: withOutlook(draft.values) }}
        curves={Object.fromEntries(curves)}
        ruleOfThumb={ruleOfThumb(units)}
        labels={priceLineLabels(project.bids)}
      />
    </>
  );
}

/** The rule of thumb on lost infill depth, with the conditions under which it may be used. */
function ruleOfThumb(units: UnitSystem): string {
  const { depthLoss, factor, validFor, source } = halfInchRule;
  const harder = Math.round((factor - 1) * 100);
  const loss = formatValue("length", depthLoss, units);
  const levels = formatInterval("impactLevel", validFor.level, units);
  const largest = formatValue("length", validFor.largestLoss, units);
  const share = formatValue("fraction", validFor.leastPolymerShare, units);
  return `Rule of thumb (${source}): ${loss} less infill, about ${harder} % harder. It is used only for levels of ${levels} by the flat missile, losses up to ${largest}, infill with at least ${share} rubber or other elastic granules by mass, and no shock layer. Everywhere else no figure is given.`;
}
