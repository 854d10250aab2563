import Link from "next/link";
import type { SignedIn } from "#lib/store";
import { signOut } from "../sign-in/actions";
import styles from "./signed-in-line.module.css";

/** At the head of pages that belong to no project: the way home, who is signed in, and the way out. */
export function SignedInLine({ who }: { who: SignedIn }) {
  return (
    <div className={`${styles.line} screen-only`}>
      <Link href="/">Evenfield</Link>
      <Link href="/account">{who.person.name}</Link>
      <form action={signOut}>
        <button type="submit" className="plain">
          Sign out
        </button>
      </form>
    </div>
  );
}
