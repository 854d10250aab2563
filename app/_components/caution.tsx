import styles from "./caution.module.css";

/** A short caution that stands where the risk is, once. */
export function Caution({ children }: { children: React.ReactNode }) {
  return (
    <aside className={styles.caution} aria-label="Caution">
      <p>{children}</p>
    </aside>
  );
}
