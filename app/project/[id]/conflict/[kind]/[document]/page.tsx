import Link from "next/link";
import { notFound } from "next/navigation";
import { documentKinds } from "#lib/store";
import { pageOfDocument } from "../../../../../_components/form/conflict-page";
import type { DocumentAddress } from "../../../../../_components/form/save-outcome";
import { PageHead } from "../../../../../_components/page-head";
import { loadProject } from "../../../../../_data/load-project";
import { kindLabels } from "../../../record/_history/kind-labels";
import { byInWords, placeInWords, valueInWords } from "./_choices/change-in-words";
import { type Choice, ChoicesForm } from "./_choices/choices-form";
import { atFirst, choiceName, type TwoVersions, twoVersions } from "./_choices/two-versions";
import { saveChosen } from "./actions";

export const metadata = { title: "Two versions" };

/** Two versions of one document, this editor's and the one that somebody saved meanwhile, to be chosen from place by place. */
export default async function ConflictPage({ params }: PageProps<"/project/[id]/conflict/[kind]/[document]">) {
  const { id: project, kind: named, document } = await params;
  const kind = documentKinds.find((known) => known === named);
  if (kind === undefined || (await loadProject(project)) === null) notFound();
  const where: DocumentAddress = { project, kind, id: document };
  const page = pageOfDocument(where);
  if (page === null) notFound();
  const both = await twoVersions(where);
  return (
    <>
      <p className="screen-only">
        <Link href={page} prefetch={false}>
          {kindLabels[kind]}
        </Link>
      </p>
      <PageHead
        title="Two versions"
        decide="Which of two texts stands, place by place, where somebody else saved while you were typing."
      />
      {both.kind === "two-versions" ? <Choices where={where} both={both} /> : <p>{sentences[both.kind]}</p>}
    </>
  );
}

const sentences = {
  "no-draft": "There is nothing to choose: no text of yours waits here. What was saved stands.",
  "draft-of-this":
    "There is nothing to choose: your draft is typed over the version that stands. Its page goes on with it.",
  gone: "What you typed over was removed meanwhile. Your text is kept as a draft, and comes back with it when it is restored.",
} as const;

function Choices({ where, both }: { where: DocumentAddress; both: Extract<TwoVersions, { kind: "two-versions" }> }) {
  const { base, mine, theirs, savedBy, version, basedOn, changes } = both;
  const clashing = changes.filter(({ by }) => by === "both").length;
  const choices = changes.map(
    (change, index): Choice => ({
      name: choiceName(index),
      place: placeInWords(change.path, [mine, theirs, base]),
      changedBy: byInWords(change, savedBy),
      base: valueInWords(change.base, undefined),
      mine: valueInWords(change.mine, change.theirs),
      theirs: valueInWords(change.theirs, change.mine),
      chosen: atFirst(change),
    }),
  );
  return (
    <>
      <p>
        Your text was typed over version {basedOn}; {savedBy} saved version {version} meanwhile.{" "}
        {clashing === 0
          ? "No place was changed by both, so both can stand as they are chosen below."
          : `${clashing === 1 ? "One place was" : `${clashing} places were`} changed by both: choose there.`}{" "}
        Until you save, theirs stands and yours is kept as a draft.
      </p>
      <ChoicesForm action={saveChosen.bind(null, { ...where, basedOn, version })} choices={choices} savedBy={savedBy} />
    </>
  );
}
