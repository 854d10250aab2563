import type { ClaimField } from "#lib/claim";
import type { Answer } from "#lib/crosscheck";
import type { BidText } from "./schema";

/** An answer as typed, with the text that the claims it speaks of hold from now on. */
export type AnswerText = Readonly<{
  finding: string;
  asked: string;
  answer: string;
  received: string;
  outcome: Answer["outcome"];
  claims: readonly Readonly<{ id: string; fields: Readonly<Partial<Record<ClaimField, string>>> }>[];
}>;

type ClaimRow = BidText["claims"][number];

const changedFields = (claim: ClaimRow, fields: Partial<Record<ClaimField, string>>): readonly ClaimField[] =>
  (Object.keys(fields) as ClaimField[]).filter((field) => fields[field] !== (claim[field] ?? ""));

/**
 * The bid with an answer recorded and its claims amended. What an amended claim said before is kept with the answer;
 * a claim whose text stays as it was is not touched. Text only: the schema of the bid reads it as any other.
 */
export function answeredBid(bid: BidText, id: string, given: AnswerText): BidText {
  const { claims, ...words } = given;
  const amendments = claims.flatMap(({ id: claim, fields }) => {
    const row = bid.claims.find((candidate) => candidate.id === claim);
    const changed = row === undefined ? [] : changedFields(row, fields);
    return row === undefined || changed.length === 0 ? [] : [{ row, fields, changed }];
  });
  const amended = amendments.map(({ row, changed }) => ({
    claim: row.id,
    fields: Object.fromEntries(changed.map((field) => [field, row[field] ?? ""])),
  }));
  return {
    ...bid,
    claims: bid.claims.map((row) => {
      const amendment = amendments.find((candidate) => candidate.row === row);
      return amendment === undefined ? row : { ...row, ...amendment.fields };
    }),
    answers: [...(bid.answers ?? []), { id, ...words, amended }],
  };
}
