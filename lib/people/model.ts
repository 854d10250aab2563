/** What somebody does in a project. */
export type RoleId = "administrator" | "architect" | "representative" | "evaluator" | "reader";

/** One person of a project. `id` is that of whoever sits at the keyboard under this name. */
export type Person = Readonly<{
  id: string;
  name: string;
  /** Office or trade, as it shall stand on the sheets: "athletic director". May be empty. */
  position: string;
  roles: readonly RoleId[];
}>;

/** Things that a role lets somebody do. Reading needs no role. */
export type ActId =
  | "set-criteria"
  | "freeze-and-amend"
  | "enter-bids"
  | "level-costs"
  | "keep-papers"
  | "list-people"
  | "move-stage"
  | "score"
  | "agree";

/**
 * What somebody may do who is not on the list: on one computer, where names are taken on trust, everything but scoring;
 * behind sign-in nothing, unless they administer the owner’s organisation. Then they may do what the owner’s administrator
 * may, on the list or not, as somebody has to be able to put right a list that names nobody who is still there.
 */
export type Unlisted = "everything-but-scoring" | "nothing" | "administrator";

/** Whoever is at the keyboard, as the rules see them. */
export type Actor = Readonly<{
  id: string;
  name: string;
  /** Empty for somebody who is not on the list. */
  roles: readonly RoleId[];
  /** What they may do. */
  acts: readonly ActId[];
}>;
