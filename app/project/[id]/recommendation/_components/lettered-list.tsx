import styles from "../page.module.css";

/** One line for each bid, told apart by its letter. */
export function LetteredList({
  lines,
  plate,
}: {
  lines: readonly Readonly<{ letter: string; line: string }>[];
  plate: (letter: string) => React.ReactNode;
}) {
  return (
    <ul className={styles.lettered}>
      {lines.map(({ letter, line }) => (
        <li key={letter}>
          {plate(letter)} <span>{line}</span>
        </li>
      ))}
    </ul>
  );
}
