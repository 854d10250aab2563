import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { startingSpecification } from "#lib/requirement";
import { PageHead } from "../../../../_components/page-head";
import { LanguageList } from "../_components/language-list";
import { SpecificationPages } from "../_components/specification-pages";
import { addressesOf } from "../_drafted/addresses";
import { loadSection } from "../_drafted/load-section";
import { specificationStart } from "../_drafted/specification-start";
import { NamesForm } from "./_components/names-form";
import { PastedSection } from "./_components/pasted-section";

export const metadata: Metadata = { title: "Neutral language" };

export default async function LanguagePage({ params }: PageProps<"/project/[id]/specification/language">) {
  const { id } = await params;
  const loaded = await loadSection(id);
  if (loaded === null) notFound();
  const { language, documents, input, project } = loaded;
  const addresses = addressesOf(id, documents.requirements.body, input.requirements);
  const notes = language.map((found, index) => ({ ...found, key: String(index) }));
  const { names } = project.specification ?? startingSpecification;
  return (
    <>
      <PageHead
        title="Neutral language"
        decide="Which words of the draft, or of a section received from elsewhere, may favour or shut out a product or a firm."
      />
      <SpecificationPages project={id} here="language" />
      <p>
        A note is a question to the writer and no finding of law. Each says the words, the concern, what it rests on,
        and what could be written instead. No note does not mean that a text is neutral: limits favour as well, and the{" "}
        <Link href={`/project/${id}/specification/competition`}>competition check</Link> looks at those.
      </p>
      <section aria-labelledby="draft">
        <h2 id="draft">The draft</h2>
        {notes.length === 0 ? (
          <p>There is no note on the draft as last saved.</p>
        ) : (
          <LanguageList
            notes={notes}
            place={(key) => {
              const { place, article, from } = notes[Number(key)] ?? { place: "", article: "", from: "" };
              return (
                <Link
                  href={from === "" ? `/project/${id}/specification#article-${article}` : addresses.clause(from)}
                  prefetch={false}
                >
                  {from === "" ? place : `${place}, change the clause`}
                </Link>
              );
            }}
          />
        )}
      </section>
      <section aria-labelledby="names">
        <h2 id="names">The owner’s list of names</h2>
        <NamesForm start={await specificationStart(id, documents.specification)} />
      </section>
      <section aria-labelledby="pasted">
        <h2 id="pasted">A text from elsewhere</h2>
        <p>Paste a section that somebody offers you, whole or in part, and read what it would cost competition.</p>
        <PastedSection names={names} />
      </section>
    </>
  );
}
