import Link from "next/link";
import { notFound } from "next/navigation";
import { testPlan } from "#lib/fieldtest";
import { impactCaution } from "#lib/impact";
import { failed } from "#lib/quantity";
import { Caution } from "../../../_components/caution";
import { PageHead } from "../../../_components/page-head";
import { currentEditor } from "../../../_data/editor";
import { loadEvaluation } from "../../../_data/load-project";
import { projectStore } from "../../../_data/store";
import { readersUnits } from "../../../_units";
import { AfterRemoval } from "../_components/after-removal";
import { pageOf } from "../_contents";
import { AddCampaign } from "./_components/add-campaign";
import { CampaignList } from "./_components/campaign-list";
import { InstalledSection } from "./_components/installed-section";
import { PlanSection } from "./_components/plan-section";
import { ShareSection } from "./_components/share-section";
import { TrendSection } from "./_components/trend-section";
import { expectedText } from "./_tests/expected-levels";
import { installedChoices } from "./_tests/installed-choices";
import { planAddress, planChoice, planStart, planWish } from "./_tests/plan-choice";
import { promisedLevels } from "./_tests/promised-levels";
import { limitOf, readCampaigns, requiredMethod } from "./_tests/read-campaigns";
import { shareAsked, shareChoice } from "./_tests/share-choice";
import { restoreCampaign } from "./actions";

export const metadata = { title: "Field tests" };

export default async function FieldTestsPage({ params, searchParams }: PageProps<"/project/[id]/field-tests">) {
  const [{ id }, asked, units] = await Promise.all([params, searchParams, readersUnits()]);
  const loaded = await loadEvaluation(id);
  if (loaded === null) notFound();
  const { project, evaluation, documents } = loaded;
  const { limit } = limitOf(project);
  const choice = planChoice(asked, planStart(project));
  const wish = planWish(choice);
  const plan = wish.ok ? testPlan(project.brief.field, wish.value) : failed(wish.problem);
  const read = readCampaigns(
    project,
    documents.campaigns.map((campaign) => ({ id: campaign.id, ...campaign.model })),
  );
  const share = shareChoice(asked, expectedText(read.at(-1)?.reduced));
  const drafts = await (await projectStore()).drafts.list(id, await currentEditor());
  const bidOf = (installed: string) => {
    const index = project.bids.findIndex((bid) => bid.id === installed);
    const bid = project.bids[index];
    return bid === undefined ? null : { bid, letter: bid.letter, index };
  };
  const listed = read.map((campaign) => {
    const stored = documents.campaigns.find((document) => document.id === campaign.reduced.campaign.id);
    const version = stored?.version ?? 0;
    const drafted = drafts.some(
      (draft) => draft.kind === "campaign" && draft.id === stored?.id && draft.basedOnVersion === version,
    );
    return { ...campaign, version, drafted, bid: bidOf(campaign.installed) };
  });
  const systems = [...new Set(read.map(({ installed }) => bidOf(installed)?.bid.id ?? ""))].map((installed) => {
    const found = bidOf(installed);
    const hardness = found === null ? null : (evaluation.bids[found.index]?.hardness ?? null);
    return {
      bid: found,
      campaigns: read.filter((campaign) => (bidOf(campaign.installed)?.bid.id ?? "") === installed),
      promised: promisedLevels(found?.bid ?? null, hardness?.asNew ?? null, requiredMethod(project)),
      sensitivity: hardness?.chances.sensitivity ?? null,
    };
  });
  return (
    <>
      <PageHead {...pageOf("field-tests")} />
      <Caution>{impactCaution}</Caution>
      <PlanSection project={id} choice={choice} plan={plan} units={units} />
      <ShareSection project={id} choice={share} asked={shareAsked(share)} limit={limit} plan={choice} units={units} />
      <section aria-labelledby="campaigns">
        <h2 id="campaigns">Test campaigns</h2>
        <AfterRemoval
          project={id}
          what="campaign"
          asked={asked}
          standing={documents.campaigns.map((campaign) => campaign.id)}
          restore={restoreCampaign}
        />
        {listed.length === 0 ? (
          <p>
            No test is recorded yet. Add the acceptance test of the finished field first: its age counts from there.
          </p>
        ) : (
          <CampaignList project={id} campaigns={listed} units={units} />
        )}
        <h3 className="screen-only">Add a campaign</h3>
        <AddCampaign
          project={id}
          kind={read.some(({ reduced }) => reduced.campaign.kind === "acceptance") ? "yearly" : "acceptance"}
          bids={installedChoices(project.bids, "")}
          installed={read.at(-1)?.installed ?? ""}
          plan={plan.ok ? planAddress(choice) : null}
        />
      </section>
      <TrendSection systems={systems} limit={limit} units={units} />
      <InstalledSection systems={systems} requirement={project.requirements.impact} units={units} />
      <section aria-labelledby="trace-of-a-drop" className="screen-only">
        <h2 id="trace-of-a-drop">Trace of a single drop</h2>
        <p>
          <Link href={`/project/${id}/field-tests/trace`}>Read an acceleration–time file</Link>: level, duration, speeds
          and penetration of one drop.
        </p>
      </section>
    </>
  );
}
