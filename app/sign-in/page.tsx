import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { ReplyForm } from "../_components/reply-form";
import { currentAsker } from "../_data/asker";
import { installation } from "../_data/installation";
import { signIn } from "./actions";

export const metadata: Metadata = { title: "Sign in" };

export default async function SignInPage({ searchParams }: PageProps<"/sign-in">) {
  if (installation().mode === "local") notFound();
  if ((await currentAsker()).kind === "person") redirect("/");
  const { to } = await searchParams;
  return (
    <main id="main" className="plain-page">
      <h1>Sign in to Evenfield</h1>
      <ReplyForm
        action={signIn.bind(null, typeof to === "string" ? to : "/")}
        label="Sign in"
        button="Sign in"
        fields={[
          { name: "email", label: "Address of your mail", type: "email", autoComplete: "username", longest: 254 },
          { name: "password", label: "Password", type: "password", autoComplete: "current-password", longest: 1024 },
        ]}
      />
      <p>
        <Link href="/sign-in/forgotten">I don’t know my password</Link>
      </p>
      <p className="soft">
        Whoever works on a project is invited by the administrator of its owner. If you were sent a link to read what
        was released to the public, open that link; it needs no password.
      </p>
    </main>
  );
}
