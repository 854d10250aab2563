"use client";
import { useEffect } from "react";

/** What a reader sees when a page can't be made. Nothing typed is lost: unsent text stays in the browser. */
export default function ErrorPage({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  useEffect(() => console.error(error), [error]);
  return (
    <main id="main" className="plain-page">
      <h1>This page could not be made</h1>
      <p>
        What you typed is kept. The server’s log says more
        {error.digest === undefined ? "." : `, under the number ${error.digest}.`}
      </p>
      <button type="button" onClick={reset}>
        Try again
      </button>
    </main>
  );
}
