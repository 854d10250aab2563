import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { passwordLength } from "#lib/password";
import { type AskedField, ReplyForm } from "../../_components/reply-form";
import { people } from "../../_data/asker";
import { installation } from "../../_data/installation";
import { comeIn } from "./actions";

export const metadata: Metadata = { title: "Come in", robots: { index: false }, referrer: "no-referrer" };

const passwords: readonly AskedField[] = [
  {
    name: "password",
    label: "Password",
    type: "password",
    autoComplete: "new-password",
    hint: `At least ${passwordLength.least} characters, of any kind. Several words in a row do well.`,
    longest: passwordLength.most * 4,
  },
  {
    name: "password-again",
    label: "The same password again",
    type: "password",
    autoComplete: "new-password",
    longest: passwordLength.most * 4,
  },
];

const owner: readonly AskedField[] = [
  {
    name: "organisation",
    label: "Organisation",
    hint: "Who owns the projects, such as a school district.",
    autoComplete: "organization",
  },
  { name: "name", label: "Your name", hint: "As it shall stand in the record.", autoComplete: "name", longest: 80 },
  { name: "email", label: "Address of your mail", type: "email", autoComplete: "username", longest: 254 },
];

export default async function ComeInPage({ params }: PageProps<"/come-in/[token]">) {
  if (installation().mode === "local") notFound();
  const { token } = await params;
  const way = await (await people()).accounts.wayIn(token);
  if (way === null)
    return (
      <main id="main" className="plain-page">
        <h1>This link no longer serves</h1>
        <p>It was used already, or its time is over. Ask whoever sent it for another.</p>
        <p>
          <Link href="/sign-in">Sign in</Link>
        </p>
      </main>
    );
  const form = (button: string, fields: readonly AskedField[]) => (
    <ReplyForm action={comeIn.bind(null, token)} label="Set a password" button={button} fields={fields} />
  );
  if (way.purpose === "first-owner")
    return (
      <main id="main" className="plain-page">
        <h1>Set up Evenfield</h1>
        <p>
          You are the first here. You will administer the organisation: invite people, begin projects, and say who may
          do what. Projects that are on this server already belong to it.
        </p>
        {form("Set up and sign in", [...owner, ...passwords])}
      </main>
    );
  const { person, organisations } = way;
  return (
    <main id="main" className="plain-page">
      <h1>{way.purpose === "invitation" ? `Welcome, ${person.name}` : "A new password"}</h1>
      <p>
        {way.purpose === "invitation" ? `You were invited by ${organisations.join(" and ")}. ` : ""}
        You sign in as <strong>{person.email}</strong>. Choose a password.
      </p>
      {form("Set the password and sign in", passwords)}
    </main>
  );
}
