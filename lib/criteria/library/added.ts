import type { z } from "zod";
import { ratingMeasure } from "../rating-measure";
import type { CriterionText } from "../schema";
import type { headingsSchema } from "../weights/schema";
import { library } from "./library";
import { type LibraryEntry, libraryHeadings, type Profile, type ProfileEntry } from "./model";

export type HeadingText = z.input<typeof headingsSchema>[number];

/** Criteria and headings as a form holds them. */
export type CriteriaText = Readonly<{ criteria: readonly CriterionText[]; headings: readonly HeadingText[] }>;

/** What adding would make of it, and what it would leave as it is. Nothing that stands there is changed. */
export type Addition = Readonly<{
  result: CriteriaText;
  added: readonly CriterionText[];
  /** Entries whose measure a criterion judges already, with that criterion's name. */
  passedOver: readonly Readonly<{ label: string; judgedBy: string }>[];
}>;

/**
 * The criterion that judges the matter of an entry already; null where none does. Ratings are all by one measure, so
 * there the entry is known again by its id.
 */
export const judgingAlready = (
  criteria: readonly CriterionText[],
  { id, criterion: { measure } }: Pick<LibraryEntry, "id" | "criterion">,
): CriterionText | null =>
  criteria.find((one) => one.measure === measure && (measure !== ratingMeasure.id || one.id === id)) ?? null;

function freeId(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  for (let number = 2; ; number += 1) if (!taken.includes(`${wanted}-${number}`)) return `${wanted}-${number}`;
}

const weighs = ({ valueFunction, weight }: CriterionText): boolean =>
  valueFunction.kind !== "none" && Number(weight) !== 0;

/**
 * One criterion of the library beside those that stand there. It starts without weight where others weigh already, so
 * that nothing that was weighed moves; under the heading of its own kind where there is such a heading.
 */
export function withEntry(
  { criteria, headings }: CriteriaText,
  { id, heading, criterion, points }: LibraryEntry,
): Addition {
  const added: CriterionText = {
    ...criterion,
    id: freeId(
      id,
      criteria.map((one) => one.id),
    ),
    heading: headings.some((one) => one.id === heading) ? heading : "",
    weight: criteria.some(weighs) ? "0" : points,
  };
  return { result: { criteria: [...criteria, added], headings }, added: [added], passedOver: [] };
}

/** The entry of the library as a profile has it. */
function ofProfile({ entry, points, changes }: ProfileEntry): LibraryEntry {
  const found = library.find(({ id }) => id === entry);
  if (found === undefined) throw new RangeError(`no criterion ${entry} in the library`);
  return { ...found, points, criterion: { ...found.criterion, ...changes } };
}

/** The criteria of a profile as entries, in its order. */
export const profileEntries = ({ entries }: Profile): readonly LibraryEntry[] => entries.map(ofProfile);

/**
 * A profile in an empty list: its headings with their points, and its criteria under them. Beside criteria that stand
 * there: only what none of them judges yet, one by one and without weight.
 */
export function withProfile(now: CriteriaText, profile: Profile): Addition {
  const entries = profileEntries(profile);
  if (now.criteria.length === 0) {
    const headings = profile.headings.map(({ id, points }) => ({ id, label: libraryHeadings[id], points }));
    const criteria = entries.map(({ id, heading, criterion, points }) => ({
      ...{ ...criterion, id, weight: points },
      heading: headings.some((one) => one.id === heading) ? heading : "",
    }));
    return { result: { criteria, headings }, added: criteria, passedOver: [] };
  }
  let result = now;
  const added: Addition["added"][number][] = [];
  const passedOver: Addition["passedOver"][number][] = [];
  for (const entry of entries) {
    const judging = judgingAlready(result.criteria, entry);
    if (judging === null) {
      const more = withEntry(result, entry);
      result = more.result;
      added.push(...more.added);
    } else passedOver.push({ label: entry.criterion.label, judgedBy: judging.label });
  }
  return { result, added, passedOver };
}
