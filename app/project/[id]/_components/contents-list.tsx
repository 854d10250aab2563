"use client";
import Link from "next/link";
import { usePathname } from "next/navigation";
import { contents } from "../_contents";
import styles from "./contents-list.module.css";

/** The report's table of contents, with the page that is open marked; of a public link only what was released. */
export function ContentsList({ project, released }: { project: string; released: readonly string[] | null }) {
  const path = usePathname();
  return (
    <ol className={styles.list} data-part={released !== null}>
      {contents
        .filter(({ slug }) => released === null || released.includes(slug))
        .map(({ slug, title }) => {
          const address = `/project/${project}/${slug}`;
          const current = path === address || path.startsWith(`${address}/`);
          return (
            <li key={slug}>
              <Link href={address} prefetch={false} {...(current ? { "aria-current": "page" as const } : {})}>
                {title}
              </Link>
            </li>
          );
        })}
    </ol>
  );
}
