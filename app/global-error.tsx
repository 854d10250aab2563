"use client";
import "./tokens.css";
import "./base.css";

/** The last resort, when not even the frame of a page can be made. */
export default function GlobalErrorPage({ reset }: { reset: () => void }) {
  return (
    <html lang="en-US">
      <body>
        <main id="main" className="plain-page">
          <h1>Evenfield could not make this page</h1>
          <p>What you typed is kept in this browser. Try again, and look at the server’s log if it goes on.</p>
          <button type="button" onClick={reset}>
            Try again
          </button>
        </main>
      </body>
    </html>
  );
}
