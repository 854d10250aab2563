import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { ReplyForm } from "../../_components/reply-form";
import { installation } from "../../_data/installation";
import { askForNewPassword } from "../actions";

export const metadata: Metadata = { title: "A new password" };

export default async function ForgottenPage() {
  const installed = installation();
  if (installed.mode === "local") notFound();
  return (
    <main id="main" className="plain-page">
      <h1>A new password</h1>
      {installed.mail === null ? (
        <p>
          This server sends no mail. Ask an administrator of your organisation: they can make you a link by which you
          set a new password.
        </p>
      ) : (
        <>
          <p>We send a link to the address with which you sign in. It serves for an hour, once.</p>
          <ReplyForm
            action={askForNewPassword}
            label="Ask for a new password"
            button="Send me a link"
            fields={[
              { name: "email", label: "Address of your mail", type: "email", autoComplete: "username", longest: 254 },
            ]}
          />
        </>
      )}
      <p>
        <Link href="/sign-in">Back to signing in</Link>
      </p>
    </main>
  );
}
