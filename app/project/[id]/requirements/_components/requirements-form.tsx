"use client";
import { type RequirementsText, requirementsSchema } from "#lib/evaluation";
import { AutosaveForm } from "../../../../_components/form/autosave-form";
import type { DocumentAddress, SaveAction } from "../../../../_components/form/save-outcome";
import type { SharedDocument } from "../../../../_components/form/shared-document";
import type { Draft } from "../../../../_components/form/start-of";
import { saveDocument } from "../../_actions/save-document";
import { CriteriaList } from "./criteria-list";
import { HeadingsFields } from "./headings-fields";
import { ImpactFields } from "./impact-fields";
import { StartingPoints } from "./starting-points";
import { WeighingFields } from "./weighing-fields";
import { WeightsTable } from "./weights-table";
import { withOutlook } from "./with-outlook";

/** Clauses of the same document are edited under Specification. */
const shared: SharedDocument<RequirementsText> = {
  parts: ["impact", "criteria", "headings", "weighing"],
  filled: (body) => withOutlook(body as RequirementsText),
};

export function RequirementsForm({
  where,
  version,
  values,
  draft,
  save = saveDocument,
  curves,
  ruleOfThumb,
  labels,
}: {
  where: DocumentAddress;
  version: number;
  values: RequirementsText;
  draft: Draft<RequirementsText> | null;
  save?: SaveAction;
  /** The value function of each criterion as last saved, drawn, by its id. */
  curves: Readonly<Record<string, React.ReactNode>>;
  ruleOfThumb: string;
  /** Of the price lines of all bids. */
  labels: readonly string[];
}) {
  return (
    <AutosaveForm
      schema={requirementsSchema}
      where={where}
      version={version}
      values={values}
      draft={draft}
      save={save}
      label="Requirements"
      shared={shared}
    >
      <section aria-labelledby="requirements-impact">
        <h2 id="requirements-impact">Impact</h2>
        <ImpactFields ruleOfThumb={ruleOfThumb} labels={labels} />
      </section>
      <section aria-labelledby="requirements-criteria">
        <h2 id="requirements-criteria">Criteria</h2>
        <p>
          A <strong>gate</strong> is a limit that every bid has to keep. A bid that is sure to miss one is out, however
          well it does elsewhere; a bid that does not show the figure stays open until it does.
        </p>
        <p>
          A <strong>score</strong> says how good a figure is to you, from nothing to in full, on figures that you set
          here before any bid is read. It never depends on what the other bids offer. A criterion may have a gate, a
          score or both.
        </p>
        <StartingPoints />
        <CriteriaList curves={curves} />
      </section>
      <section aria-labelledby="requirements-weights">
        <h2 id="requirements-weights">Weights</h2>
        <p>
          A weight says what it is worth to you to go from the worst figure of a criterion to its best one, next to the
          same step in the others. Only proportions count, so the points need not add up to 100.
        </p>
        <HeadingsFields />
        <WeighingFields />
        <WeightsTable />
      </section>
    </AutosaveForm>
  );
}
