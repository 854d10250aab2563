import type { Metadata } from "next";
import Link from "next/link";

export const metadata: Metadata = { title: "No such page" };

export default function NotFound() {
  return (
    <main id="main" className="plain-page">
      <h1>There is no such page</h1>
      <p>The address may be mistyped, what stood here was removed, or it is not open to you.</p>
      <p>
        <Link href="/">All projects</Link>
      </p>
    </main>
  );
}
