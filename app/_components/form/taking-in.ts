import { type Change, clashes, joined, type Put, puts } from "#lib/together";

/** What becomes of a form when somebody else saved: what to put into it, and what is known to both afterwards. */
export type TakenIn<Values> = Readonly<{
  puts: readonly Put[];
  isClear: boolean;
  /** The text with all that both agree on, for the next time; where both changed the same, it stays as it was. */
  known: Values;
  joined: Values;
}>;

/** Whether one of two paths leads through the other. */
const overlap = (one: readonly string[], other: readonly string[]): boolean =>
  one.slice(0, other.length).every((key, index) => key === other[index]);

/** Brings the text of a form together with what somebody else saved; what this side changed stays. */
export function takenIn<Values>(base: unknown, mine: Values, theirs: Values): TakenIn<Values> {
  const three = { base, mine, theirs };
  const both = clashes(three);
  const clashing = ({ path }: Change) => both.some((clash) => overlap(clash.path, path));
  const known = joined({ base, mine: base, theirs }, (change) => (clashing(change) ? "mine" : "theirs"));
  const result = joined(three) as Values;
  return { puts: puts(mine, result), isClear: both.length === 0, known: known as Values, joined: result };
}

/** Whether putting something would replace the field that somebody is in. */
export const touches = (all: readonly Put[], field: string): boolean =>
  all.some(({ path }) => field === path || field.startsWith(`${path}.`));
