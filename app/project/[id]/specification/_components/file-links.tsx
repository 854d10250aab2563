import styles from "./notes.module.css";

/** One text in the formats in which it can be taken along. */
export function FileLinks({
  project,
  what,
  files,
}: {
  project: string;
  /** What the files hold, for readers who hear the links one by one. */
  what: string;
  files: readonly Readonly<{ name: string; label: string }>[];
}) {
  return (
    <ul className={`${styles.files} screen-only`}>
      {files.map(({ name, label }) => (
        <li key={name}>
          <a className="button" href={`/project/${project}/specification/files/${name}`} download>
            {label}
            <span className="visually-hidden"> of {what}</span>
          </a>
        </li>
      ))}
    </ul>
  );
}
