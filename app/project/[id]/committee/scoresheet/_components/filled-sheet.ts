import type { SheetText } from "#lib/committee";
import type { Criterion } from "#lib/criteria";

/** A sheet as its form holds it: the statement may still be open, and every bid has a place on every criterion. */
export type SheetValues = Readonly<{
  statement: Readonly<{ kind: string; bids?: readonly string[]; words?: string }>;
  ratings: readonly Readonly<{ criterion: string; bid: string; level: string; comment: string }>[];
}>;

/** What was typed, laid over all criteria and bids as they are now. */
export function filledSheet(
  typed: SheetText | SheetValues | null,
  criteria: readonly Pick<Criterion, "id">[],
  bids: readonly string[],
): SheetValues {
  const ratings: SheetValues["ratings"] = (typed?.ratings ?? []).map((rating) => ({
    ...rating,
    comment: rating.comment ?? "",
  }));
  return {
    statement: typed?.statement ?? { kind: "not-stated" },
    ratings: criteria.flatMap((criterion) =>
      bids.map(
        (bid) =>
          ratings.find((rating) => rating.criterion === criterion.id && rating.bid === bid) ?? {
            ...{ criterion: criterion.id, bid, level: "", comment: "" },
          },
      ),
    ),
  };
}
