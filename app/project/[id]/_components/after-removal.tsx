import styles from "./after-removal.module.css";

/** What became of a removal that the address tells of: the way back, or why it was not done. Nothing where it tells of none. */
export function AfterRemoval({
  project,
  what,
  asked: { removed, kept },
  standing,
  restore,
  stays = "It stays in the record and can be brought back.",
}: {
  project: string;
  /** What was to be removed, in one word, which is also the name of its id in the form. */
  what: string;
  /** Of the address: `removed` names what went, `kept` is there where it did not go. */
  asked: Readonly<Record<string, string | string[] | undefined>>;
  /** The ids of those that stand. */
  standing: readonly string[];
  restore: (form: FormData) => Promise<void>;
  stays?: string;
}) {
  if (typeof removed === "string" && !standing.includes(removed))
    return (
      <form action={restore} className={`${styles.notice} screen-only`}>
        <p role="status">
          The {what} was removed. {stays}
        </p>
        <input type="hidden" name="project" value={project} />
        <input type="hidden" name={what} value={removed} />
        <button type="submit">Bring the {what} back</button>
      </form>
    );
  if (typeof kept === "string")
    return (
      <p role="status" className={styles.notice}>
        The {what} was not removed: it was changed after this page was loaded. Look at it again first.
      </p>
    );
  return null;
}
