import Link from "next/link";
import styles from "./sub-pages.module.css";

/** The way between the pages of one chapter; the one that is open is marked. */
export function SubPages({
  label,
  base,
  pages,
  here,
}: {
  label: string;
  base: string;
  pages: readonly Readonly<{ slug: string; path: string; title: string }>[];
  here: string;
}) {
  return (
    <nav aria-label={label} className={`${styles.pages} screen-only`}>
      <ul>
        {pages.map(({ slug, path, title }) => (
          <li key={slug}>
            {slug === here ? <span aria-current="page">{title}</span> : <Link href={`${base}${path}`}>{title}</Link>}
          </li>
        ))}
      </ul>
    </nav>
  );
}
