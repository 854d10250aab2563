import type { Metadata } from "next";
import Link from "next/link";
import { passwordLength } from "#lib/password";
import { ReplyForm } from "../_components/reply-form";
import { Scroller } from "../_components/scroller";
import { SignedInLine } from "../_components/signed-in-line";
import { currentPerson, people } from "../_data/asker";
import { browserName } from "./_browser-name";
import { changePassword, endSignIn } from "./actions";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Your account" };

const dayAndTime = (at: string): string =>
  new Date(at).toLocaleString("en-US", { dateStyle: "medium", timeStyle: "short", timeZone: "UTC" });

export default async function AccountPage() {
  const who = await currentPerson();
  const open = await (await people()).accounts.signIns(who);
  const longest = passwordLength.most * 4;
  return (
    <main id="main" className="plain-page">
      <SignedInLine who={who} />
      <h1>Your account</h1>
      <dl className={styles.facts}>
        <dt>Name</dt>
        <dd>{who.person.name}</dd>
        <dt>Address of your mail</dt>
        <dd>{who.person.email}</dd>
        <dt>Organisations</dt>
        <dd>
          {who.organisations.map(({ id, name, administers }) => (
            <p key={id}>
              <Link href={`/organisation/${id}`}>{name}</Link>
              {administers ? ", which you administer" : ""}
            </p>
          ))}
        </dd>
      </dl>
      <section aria-labelledby="open">
        <h2 id="open">Where you are signed in</h2>
        <Scroller label="Where you are signed in">
          <table className={styles.signIns}>
            <caption className="visually-hidden">Where you are signed in</caption>
            <thead>
              <tr>
                <th scope="col">Browser</th>
                <th scope="col">Since</th>
                <th scope="col">
                  <span className="visually-hidden">End it</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {open.map(({ id, browser, since, isThisOne }) => (
                <tr key={id}>
                  <th scope="row">
                    {browserName(browser)}
                    {isThisOne ? ", this one" : ""}
                  </th>
                  <td>{dayAndTime(since)} UTC</td>
                  <td>
                    <ReplyForm
                      action={endSignIn.bind(null, id)}
                      label={`Sign out: ${browserName(browser)}, since ${dayAndTime(since)}`}
                      button="Sign out"
                      fields={[]}
                      isPlain
                    />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </section>
      <section aria-labelledby="password">
        <h2 id="password">Change your password</h2>
        <ReplyForm
          action={changePassword}
          label="Change your password"
          button="Change it"
          fields={[
            {
              ...{ name: "current-password", label: "The password that you have now", type: "password" },
              ...{ autoComplete: "current-password", longest },
            },
            {
              ...{
                name: "new-password",
                label: "A new password",
                type: "password",
                autoComplete: "new-password",
                longest,
              },
              hint: `At least ${passwordLength.least} characters, of any kind.`,
            },
            {
              ...{ name: "new-password-again", label: "The new password again", type: "password" },
              ...{ autoComplete: "new-password", longest },
            },
          ]}
        />
      </section>
    </main>
  );
}
