import Link from "next/link";
import { notFound } from "next/navigation";
import { methodOf, propertyOf } from "#lib/claim";
import type { CampaignText } from "#lib/evaluation";
import { fieldOutline } from "#lib/field";
import { testPlan } from "#lib/fieldtest";
import { impactCaution } from "#lib/impact";
import { Caution } from "../../../../_components/caution";
import { draftOf } from "../../../../_data/draft-of";
import { loadEvaluation } from "../../../../_data/load-project";
import { readersUnits } from "../../../../_units";
import { dateInWords, kindWords } from "../_tests/campaign-words";
import { installedChoices } from "../_tests/installed-choices";
import { planChoice, planStart, planWish } from "../_tests/plan-choice";
import { readCampaigns } from "../_tests/read-campaigns";
import { plannedLocations } from "../_tests/starting-campaign";
import { CampaignForm } from "./_components/campaign-form";
import { Results } from "./_components/results";
import styles from "./page.module.css";

type Props = PageProps<"/project/[id]/field-tests/[campaign]">;

export async function generateMetadata({ params }: Props) {
  const { id, campaign } = await params;
  const found = (await loadEvaluation(id))?.documents.campaigns.find((each) => each.id === campaign)?.model;
  return { title: found === undefined ? "No such campaign" : `${kindWords[found.kind]}, ${dateInWords(found.date)}` };
}

export default async function CampaignPage({ params, searchParams }: Props) {
  const [{ id, campaign }, asked, units] = await Promise.all([params, searchParams, readersUnits()]);
  const loaded = await loadEvaluation(id);
  const stored = loaded?.documents.campaigns.find((each) => each.id === campaign);
  if (loaded === null || stored === undefined) notFound();
  const { project, evaluation } = loaded;
  const [read] = readCampaigns(project, [{ id: campaign, ...stored.model }]);
  if (read === undefined) throw new Error("a campaign that was handed in comes back");
  const wish = planWish(planChoice(asked, planStart(project)));
  const plan = wish.ok ? testPlan(project.brief.field, wish.value) : null;
  const where = { project: id, kind: "campaign", id: campaign } as const;
  const index = project.bids.findIndex((bid) => bid.id === stored.model.installed);
  return (
    <>
      <header className={styles.head}>
        <p>
          <Link href={`/project/${id}/field-tests#campaigns`} className="screen-only">
            Field tests
          </Link>
        </p>
        <h1>
          {kindWords[stored.model.kind]}, {dateInWords(stored.model.date)}
        </h1>
        <p className="lede">
          What was measured on the finished field, spot by spot, and what that says against the limit.
        </p>
        <p className="row screen-only">
          <Link href={`/project/${id}/field-tests/${campaign}/on-the-field`}>Enter on the field, by phone</Link>
          <a href="#results">To the results</a>
        </p>
      </header>
      <Caution>{impactCaution}</Caution>
      <CampaignForm
        where={where}
        version={stored.version}
        values={stored.body}
        draft={await draftOf<CampaignText>(where)}
        bids={installedChoices(project.bids, stored.model.installed)}
        methods={propertyOf("g-max").methods.map((method) => ({
          value: method,
          label: methodOf(method).designation,
        }))}
        planned={plan?.ok ? plannedLocations(plan.value, units) : []}
        units={units}
      />
      <Results
        project={id}
        loaded={project}
        evaluated={evaluation.bids[index]}
        area={evaluation.area}
        bid={project.bids[index] ?? null}
        read={read}
        outline={fieldOutline(project.brief.field)}
        asked={asked}
        units={units}
      />
    </>
  );
}
