import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { propertyOf } from "#lib/claim";
import { awardedBid, reviewedRequirements, submittalReviews } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { registerLine, reviewCaution, type SubmittalText, startingContract } from "#lib/submittal";
import { Caution } from "../../../../../_components/caution";
import { PageHead } from "../../../../../_components/page-head";
import { documentStart } from "../../../../../_data/document-start";
import { loadProject } from "../../../../../_data/load-project";
import { Upload } from "../../../_components/paper/upload";
import { SubmittalPages } from "../../_components/submittal-pages";
import { filledSubmittal, type SubmittalValues } from "../../_register/submittal-values";
import { removeLine } from "../../actions";
import { ReviewSection } from "./_components/review-section";
import { SubmittalForm } from "./_components/submittal-form";

type Props = PageProps<"/project/[id]/submittals/lines/[line]">;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { id, line } = await params;
  const found = (await loadProject(id))?.documents.submittals.find((each) => each.id === line)?.model;
  return { title: found?.item ?? "No such submittal" };
}

export default async function SubmittalPage({ params }: Props) {
  const { id, line } = await params;
  const loaded = await loadProject(id);
  const stored = loaded?.documents.submittals.find((each) => each.id === line);
  if (loaded === null || stored === undefined) notFound();
  const { project } = loaded;
  const { attachments = [], contract = startingContract } = project;
  const item = { id: line, ...stored.model };
  const today = plainDate(new Date().toISOString().slice(0, 10));
  const requirements = reviewedRequirements(project.requirements);
  const award = awardedBid(project);
  const reviews = submittalReviews(project, item);
  const papers = { project: id, attachments };
  const asked = requirements.flatMap(({ id: clause, subject }) =>
    item.clauses.includes(clause) && subject?.property !== undefined ? [subject.property] : [],
  );
  return (
    <>
      <PageHead title={item.item} decide="Whether what was handed in is what was specified and what was bid." />
      <SubmittalPages project={id} here="line" />
      <Caution>{reviewCaution}</Caution>
      <p>
        {registerLine(item, today, contract.reviewDays).sentence}{" "}
        {award === null ? (
          <>
            It is held against the specification alone until{" "}
            <Link href={`/project/${id}/submittals/award`}>somebody says whose bid was taken</Link>.
          </>
        ) : (
          `It is held against the specification and bid ${award.bid.letter}.`
        )}
      </p>
      <SubmittalForm
        start={
          await documentStart<SubmittalText, SubmittalValues>(
            { project: id, kind: "submittal", id: line },
            stored,
            stored.body,
            filledSubmittal,
          )
        }
        clauses={requirements.filter(({ isOn }) => isOn).map(({ id: value, label }) => ({ value, label }))}
        asked={[...new Set(asked)]}
        drafts={reviews.map(({ rows }) =>
          rows.map(({ key, requirement, submitted, review }) => ({
            key,
            title: requirement?.label ?? (submitted === null ? "" : propertyOf(submitted.property).label),
            draft: review.comment,
          })),
        )}
        today={today}
      />
      <Upload project={id} owner={{ kind: "submittal", submittal: line }} label="Add the papers that were handed in" />
      {reviews
        .map((review, index) => (
          <ReviewSection
            // biome-ignore lint/suspicious/noArrayIndexKey: versions have no name but their number
            key={index}
            item={item}
            index={index}
            review={review}
            submittedPapers={{ ...papers, owners: [{ kind: "submittal", submittal: line }] }}
            bidPapers={{ ...papers, owners: award === null ? [] : [{ kind: "bid", bid: award.bid.id }] }}
          />
        ))
        .toReversed()}
      <form action={removeLine} className="screen-only">
        <input type="hidden" name="project" value={id} />
        <input type="hidden" name="line" value={line} />
        <input type="hidden" name="version" value={stored.version} />
        <button type="submit" className="plain">
          Take this line out of the register
        </button>
      </form>
    </>
  );
}
