import Link from "next/link";
import type { NumberedArticle, NumberedParagraph, NumberedSection } from "#lib/requirement";
import type { Addresses } from "../_drafted/addresses";
import styles from "./section-text.module.css";

type Shown = Readonly<{ addresses: Addresses | null; hasNotes: boolean }>;

const blankMark = /(\[… to be filled in: [^\]]*\])/;

/** A text whose blanks stand out and lead to the field in which they are filled in. */
function Words({ text, addresses }: { text: string; addresses: Addresses | null }) {
  return text.split(blankMark).map((part, index) => {
    const asked = /^\[… to be filled in: (.*)\]$/.exec(part)?.[1];
    // biome-ignore lint/suspicious/noArrayIndexKey: stretches of one text have no name but their place
    return asked === undefined ? part : <Blank key={index} part={part} address={addresses?.blank(asked) ?? null} />;
  });
}

function Blank({ part, address }: { part: string; address: string | null }) {
  const mark = <mark className={styles.blank}>{part}</mark>;
  return address === null ? mark : <Link href={address}>{mark}</Link>;
}

function Paragraph({ paragraph, shown }: { paragraph: NumberedParagraph; shown: Shown }) {
  const { number, text, note, from } = paragraph;
  const { addresses, hasNotes } = shown;
  return (
    <>
      {note === "" || !hasNotes ? null : (
        <p className={styles.note}>
          <strong>Note to the specifier:</strong> {note}
        </p>
      )}
      <p className={styles.paragraph}>
        <span className={styles.number}>{number} </span>
        <span>
          <Words text={text} addresses={addresses} />
          {from === "" || addresses === null ? null : (
            <Link className={`${styles.change} screen-only`} href={addresses.clause(from)} prefetch={false}>
              Change<span className="visually-hidden"> the clause “{text.split(":")[0]}”</span>
            </Link>
          )}
        </span>
      </p>
    </>
  );
}

type Tree = Readonly<{ paragraph: NumberedParagraph; below: readonly Tree[] }>;

/** Paragraphs as they hang below each other. */
function treesOf(paragraphs: readonly NumberedParagraph[], level = 0): readonly Tree[] {
  const heads = paragraphs.flatMap((paragraph, index) => (paragraph.level === level ? [index] : []));
  return heads.flatMap((head, index) => {
    const paragraph = paragraphs[head];
    const below = treesOf(paragraphs.slice(head + 1, heads[index + 1]), level + 1);
    return paragraph === undefined ? [] : [{ paragraph, below }];
  });
}

/** The numbers stand in the text, so that they read the same wherever the text is taken; the lists have none of their own. */
function Branch({ trees, shown }: { trees: readonly Tree[]; shown: Shown }) {
  return (
    <ul className={styles.paragraphs}>
      {trees.map(({ paragraph, below }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: paragraphs have no name but their place
        <li key={index}>
          <Paragraph paragraph={paragraph} shown={shown} />
          {below.length === 0 ? null : <Branch trees={below} shown={shown} />}
        </li>
      ))}
    </ul>
  );
}

function Article({ article, shown }: { article: NumberedArticle; shown: Shown }) {
  return (
    <section id={`article-${article.id}`} className={styles.article} aria-label={`${article.number} ${article.title}`}>
      <h4>
        {article.number} {article.title}
      </h4>
      <Branch trees={treesOf(article.paragraphs)} shown={shown} />
    </section>
  );
}

/** Some paragraphs of an article by themselves. */
export function Paragraphs({ article, paragraphs }: { article: string; paragraphs: readonly NumberedParagraph[] }) {
  return (
    <div className={styles.excerpt}>
      <p className={styles.number}>Article {article}</p>
      <Branch trees={treesOf(paragraphs)} shown={{ addresses: null, hasNotes: true }} />
    </div>
  );
}

/** A section as it will be read. With addresses, blanks and clauses lead to the fields in which they are changed. */
export function SectionText({
  section,
  addresses,
  notes,
}: {
  section: NumberedSection;
  addresses: Addresses | null;
  notes: "shown" | "hidden";
}) {
  const shown: Shown = { addresses, hasNotes: notes === "shown" };
  return (
    <article className={styles.section} aria-label={`Section ${section.number}`}>
      {section.parts.map(({ number, title, articles }) => (
        <section key={number} aria-label={`${number} ${title}`}>
          <h3 className={styles.part}>
            {number} {title}
          </h3>
          {articles.map((article) => (
            <Article key={article.id} article={article} shown={shown} />
          ))}
        </section>
      ))}
      <p className={styles.end}>END OF SECTION {section.number}</p>
      {section.appendices.map((article) => (
        <Article key={article.id} article={article} shown={shown} />
      ))}
    </article>
  );
}
