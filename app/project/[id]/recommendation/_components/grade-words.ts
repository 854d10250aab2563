import { widestGrade } from "#lib/document";

/** How hard a text is to read, in a sentence. */
export function gradeWords(grade: number): string {
  const year = Math.max(1, Math.round(grade));
  if (year <= widestGrade) return `reads at about school grade ${year}.`;
  return `reads at about school grade ${year}. Shorter sentences and plainer words would bring it to ${widestGrade} or below.`;
}
