import "@fontsource-variable/source-sans-3/wght.css";
import "@fontsource-variable/source-sans-3/wght-italic.css";
import "@fontsource-variable/source-serif-4/wght.css";
import "./tokens.css";
import "./base.css";
import type { Metadata, Viewport } from "next";
import { connection } from "next/server";
import styles from "./layout.module.css";

export const metadata: Metadata = {
  title: { default: "Evenfield", template: "%s · Evenfield" },
  description: "Makes competing synthetic-turf bids comparable, checkable and defensible for a public owner.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

export default async function RootLayout({ children }: { children: React.ReactNode }) {
  await connection(); // the content security policy carries a fresh nonce, so no page can be made ahead of its request
  return (
    <html lang="en-US">
      <body>
        <a href="#main" className={styles.skip}>
          Skip to the content
        </a>
        {children}
      </body>
    </html>
  );
}
