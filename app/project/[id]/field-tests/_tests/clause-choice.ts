import type { WarrantyClause } from "#lib/fieldtest";
import { explainQuantity, failed, parseExact, type Result, succeeded } from "#lib/quantity";
import { type Asked, textOf } from "./plan-choice";

/** The clause of a notice as typed. */
export type ClauseChoice = Readonly<{ where: string; words: string; limit: string }>;

export const clauseChoice = (asked: Asked, start: ClauseChoice): ClauseChoice => ({
  where: (textOf(asked, "where") ?? start.where).trim(),
  words: (textOf(asked, "words") ?? start.words).trim(),
  limit: (textOf(asked, "limit") ?? start.limit).trim(),
});

/** The clause, or what is missing of it. */
export function clauseAsked({ where, words, limit }: ClauseChoice): Result<WarrantyClause, string> {
  if (where === "" || words === "") return failed("Give the clause with its words and with the place where it stands.");
  const parsed = parseExact("impactLevel", limit);
  return parsed.ok ? succeeded({ where, words, limit: parsed.value.value }) : failed(explainQuantity(parsed.problem));
}
