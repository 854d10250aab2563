import { diffArrays, diffWords } from "diff";
import type { NumberedArticle, NumberedSection } from "./numbered-section";

/** Words of a changed paragraph: kept, added or taken out. */
export type WordChange = Readonly<{ kind: "kept" | "added" | "removed"; text: string }>;

/**
 * What became of a paragraph. `at` is its place in the article, “C.2.a”, in the later version or in the earlier one where
 * it is gone; a new paragraph before it moves it and is no change of it.
 */
export type ParagraphChange = Readonly<
  { at: string } & ({ kind: "added" | "removed"; text: string } | { kind: "changed"; words: readonly WordChange[] })
>;

/** A paragraph with its place. */
type Placed = Readonly<{ text: string; at: string }>;

/** What became of an article between two versions. Articles without a change are left out. */
export type ArticleChange = Readonly<{
  kind: "added" | "removed" | "changed";
  id: string;
  /** Number and title in the later version, or in the earlier one where it is gone. */
  heading: string;
  changes: readonly ParagraphChange[];
}>;

const articlesOf = ({ parts, appendices }: NumberedSection) => [
  ...parts.flatMap(({ articles }) => articles),
  ...appendices,
];
const headingOf = ({ number, title }: NumberedArticle) => `${number} ${title}`;

/** Every paragraph of an article with its place: the numbers above it and its own. */
function placed({ paragraphs }: NumberedArticle): readonly Placed[] {
  const above: string[] = [];
  return paragraphs.map(({ level, number, text }) => {
    above.length = level;
    above[level] = number.replace(/[.)]$/, "");
    return { text, at: above.join(".") };
  });
}

/** References to articles move when articles do; they are compared by what they point to being there, not by number. */
const withoutNumbers = (text: string) => text.replace(/\b(Article \d+\.\d+|Appendix [A-Z])\b/g, "Article");

/** Parts words as UAX #29 does, so that a number with its decimals is one word. */
const intlSegmenter = new Intl.Segmenter("en", { granularity: "word" });

function wordChanges(before: string, after: string): readonly WordChange[] {
  return diffWords(before, after, { intlSegmenter }).map(({ value, added, removed }) => ({
    kind: added ? "added" : removed ? "removed" : "kept",
    text: value,
  }));
}

/** Share of the words of the longer text that both have, below which a paragraph counts as another one. */
const alike = 0.4;

function areAlike(before: string, after: string): boolean {
  const kept = wordChanges(before, after)
    .filter(({ kind }) => kind === "kept")
    .reduce((sum, { text }) => sum + text.length, 0);
  return kept >= alike * Math.max(before.length, after.length);
}

const asAdded = (paragraph: Placed): ParagraphChange => ({ kind: "added", ...paragraph });

/** Paragraphs taken out and put in at one place: pairs that are alike are one paragraph that changed. */
function paired(removed: readonly Placed[], added: readonly Placed[]): readonly ParagraphChange[] {
  const changes: ParagraphChange[] = [];
  let next = 0;
  for (const before of removed) {
    const index = added.findIndex((after, place) => place >= next && areAlike(before.text, after.text));
    const after = added[index];
    if (after === undefined) {
      changes.push({ kind: "removed", ...before });
      continue;
    }
    changes.push(...added.slice(next, index).map(asAdded));
    changes.push({ kind: "changed", at: after.at, words: wordChanges(before.text, after.text) });
    next = index + 1;
  }
  return [...changes, ...added.slice(next).map(asAdded)];
}

function paragraphChanges(before: readonly Placed[], after: readonly Placed[]): readonly ParagraphChange[] {
  const parts = diffArrays([...before], [...after], {
    comparator: (one, other) => withoutNumbers(one.text) === withoutNumbers(other.text),
  });
  const changes: ParagraphChange[] = [];
  for (let at = 0; at < parts.length; at++) {
    const [part, next] = [parts[at], parts[at + 1]];
    if (part === undefined || (!part.added && !part.removed)) continue;
    if (part.removed && next?.added) {
      changes.push(...paired(part.value, next.value));
      at++;
    } else
      changes.push(
        ...part.value.map((paragraph): ParagraphChange => ({ kind: part.added ? "added" : "removed", ...paragraph })),
      );
  }
  return changes;
}

/** What changed between two versions of a section, article by article, in the order of the later one. */
export function comparedSections(before: NumberedSection, after: NumberedSection): readonly ArticleChange[] {
  const earlier = new Map(articlesOf(before).map((article) => [article.id, article]));
  const later = articlesOf(after);
  const kept = later.flatMap((article): readonly ArticleChange[] => {
    const old = earlier.get(article.id);
    const changes = paragraphChanges(old === undefined ? [] : placed(old), placed(article));
    if (old === undefined) return [{ kind: "added", id: article.id, heading: headingOf(article), changes }];
    const isRenamed = old.title !== article.title;
    return changes.length === 0 && !isRenamed
      ? []
      : [{ kind: "changed", id: article.id, heading: headingOf(article), changes }];
  });
  const gone = articlesOf(before)
    .filter(({ id }) => later.every((article) => article.id !== id))
    .map(
      (article): ArticleChange => ({
        kind: "removed",
        id: article.id,
        heading: headingOf(article),
        changes: paragraphChanges(placed(article), []),
      }),
    );
  return [...kept, ...gone];
}

const marked = (change: ParagraphChange): string => {
  switch (change.kind) {
    case "added":
      return `+ ${change.at} ${change.text}`;
    case "removed":
      return `- ${change.at} ${change.text}`;
    case "changed":
      return `~ ${change.at} ${change.words.map(({ kind, text }) => (kind === "added" ? `{+${text}+}` : kind === "removed" ? `[-${text}-]` : text)).join("")}`;
  }
};

/** The comparison as plain text: + added, - taken out, ~ changed with its words. */
export function comparisonText(changes: readonly ArticleChange[]): string {
  if (changes.length === 0) return "Nothing changed.";
  return changes
    .map(({ kind, heading, changes: all }) => [`${heading} (${kind})`, ...all.map(marked)].join("\n"))
    .join("\n\n");
}
