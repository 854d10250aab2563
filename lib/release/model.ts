/** Parts of a project that can be released to the public, each a page that only reads. */
export type ReleasePart =
  | "requirements"
  | "side-by-side"
  | "infill"
  | "hardness"
  | "cost"
  | "evaluation"
  | "recommendation"
  | "promised"
  | "record";

/**
 * A link that was given out. Whoever follows it reads the parts that are named, until it ends or is taken back, and
 * changes nothing. Times are ISO 8601 in UTC.
 */
export type Release = Readonly<{
  /** For whom or what it was made: "board meeting of May". */
  label: string;
  parts: readonly ReleasePart[];
  /** SHA-256 of the token; the token stands in the link alone. */
  tokenHash: string;
  endsAt: string;
  /** Null as long as it was not taken back. */
  takenBackAt: string | null;
}>;

/** Whether a link opens anything, and why not. */
export type ReleaseState = "open" | "ended" | "taken-back";
