import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { blankPlaces } from "#lib/requirement";
import { PageHead } from "../../../../_components/page-head";
import { SpecificationPages } from "../_components/specification-pages";
import { addressesOf } from "../_drafted/addresses";
import { loadSection } from "../_drafted/load-section";
import { specificationStart } from "../_drafted/specification-start";
import { SectionForm } from "./_components/section-form";

export const metadata: Metadata = { title: "Choices and blanks" };

export default async function SectionPage({ params }: PageProps<"/project/[id]/specification/section">) {
  const { id } = await params;
  const loaded = await loadSection(id);
  if (loaded === null) notFound();
  const { blanks, documents, input } = loaded;
  const places = blankPlaces(input.requirements);
  const addresses = addressesOf(id, documents.requirements.body, input.requirements);
  const ofSection = blanks.flatMap((asked) => {
    const place = places.get(asked);
    return place?.kind === "section" ? [place.id] : [];
  });
  const elsewhere = blanks.filter((asked) => places.get(asked)?.kind !== "section");
  return (
    <>
      <PageHead
        title="Choices and blanks"
        decide="Which clauses stand in the section, what is still to be filled in, and where the section stands in the project manual."
      />
      <SpecificationPages project={id} here="section" />
      <SectionForm start={await specificationStart(id, documents.specification)} openBlanks={ofSection} />
      {elsewhere.length === 0 ? null : (
        <section aria-labelledby="elsewhere">
          <h2 id="elsewhere">Blanks that are filled in elsewhere</h2>
          <ul>
            {elsewhere.map((asked) => (
              <li key={asked}>
                <Link href={addresses.blank(asked) ?? `/project/${id}/specification`} prefetch={false}>
                  {asked.charAt(0).toUpperCase() + asked.slice(1)}
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
