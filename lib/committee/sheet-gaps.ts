import type { Criterion } from "#lib/criteria";
import { isExcused } from "./excused";
import type { Rating, Sheet } from "./model";
import { levelsOf } from "./rated-figure";

/** A bid as evaluators know it. */
type LetteredBid = Readonly<{ id: string; letter: string }>;

/** What a sheet still lacks before it can be handed in. */
export type SheetGap = Readonly<
  | { kind: "not-rated"; criterion: string; bids: readonly string[] }
  | { kind: "comment-missing"; criterion: string; bid: string; level: string }
>;

/** Whether a level is the least or the greatest of its criterion: a comment is asked for there. */
export function isExtreme(criterion: Pick<Criterion, "valueFunction">, level: string): boolean {
  const levels = levelsOf(criterion);
  return levels[0]?.id === level || levels.at(-1)?.id === level;
}

const ratingOf = (sheet: Pick<Sheet, "ratings">, criterion: string, bid: string): Rating | undefined =>
  sheet.ratings.find((rating) => rating.criterion === criterion && rating.bid === bid);

/** What an evaluator has left open: a rating for each bid not excused, and a comment at each extreme. */
export function sheetGaps(
  sheet: Sheet,
  criteria: readonly Criterion[],
  bids: readonly LetteredBid[],
): readonly SheetGap[] {
  const asked = bids.filter(({ id }) => !isExcused(sheet.statement, id));
  return criteria
    .filter(({ valueFunction }) => valueFunction.kind === "rating")
    .flatMap((criterion): readonly SheetGap[] => {
      const levels = levelsOf(criterion);
      const rated = asked.map((bid) => {
        const rating = ratingOf(sheet, criterion.id, bid.id);
        return { bid, rating, level: levels.find(({ id }) => id === rating?.level) };
      });
      const open = rated.filter(({ level }) => level === undefined).map(({ bid }) => bid.letter);
      return [
        ...(open.length === 0 ? [] : [{ kind: "not-rated", criterion: criterion.label, bids: open } as const]),
        ...rated.flatMap(({ bid, rating, level }) =>
          level === undefined || !isExtreme(criterion, level.id) || (rating?.comment ?? "").trim() !== ""
            ? []
            : [{ kind: "comment-missing", criterion: criterion.label, bid: bid.letter, level: level.label } as const],
        ),
      ];
    });
}

/** Says what is lacking and what to do. */
export function explainSheetGap(gap: SheetGap): string {
  switch (gap.kind) {
    case "not-rated":
      return `“${gap.criterion}”: choose a level for bid${gap.bids.length === 1 ? "" : "s"} ${gap.bids.join(", ")}.`;
    case "comment-missing":
      return `“${gap.criterion}”, bid ${gap.bid}: say what the level “${gap.level}” rests on. The least and the greatest level need a comment.`;
  }
}
