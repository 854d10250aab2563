import type { Metadata } from "next";
import Link from "next/link";
import { type Asks, actions, doors } from "#lib/access";
import { type ActId, actLabels } from "#lib/people";
import { releaseParts } from "#lib/release";
import { RolesTable } from "../_components/roles-table";
import { Scroller } from "../_components/scroller";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Who may do what" };

/** In words, for what is no act of a role. */
const otherWords: Readonly<Record<Exclude<Asks, ActId>, string>> = {
  nothing: "everybody who reaches the server",
  "sign-in": "whoever has signed in",
  belong: "members of the organisation",
  administer: "administrators of the organisation",
  read: "everybody on the project’s list of people",
};

const isAct = (asks: Asks): asks is ActId => asks in actLabels;

/** The tables that the rules, the pages and the tests go by, printed. */
export default function AccessPage() {
  return (
    <main id="main" className={styles.page}>
      <p className="screen-only">
        <Link href="/">Evenfield</Link>
      </p>
      <h1>Who may do what</h1>
      <p className="lede">
        Who reads and who changes what on a server on which people sign in. Administrators of the organisation may do
        what the owner’s administrator may, in all its projects. On one computer without sign-in names are taken on
        trust.
      </p>
      <section aria-labelledby="roles">
        <h2 id="roles">What each role lets somebody do in a project</h2>
        <RolesTable />
      </section>
      <section aria-labelledby="pages">
        <h2 id="pages">Who reads which page and file</h2>
        <p>“[]” stands for the id of a project, a bid or a paper.</p>
        <Scroller label="Pages and files">
          <table>
            <caption className="visually-hidden">Pages and files</caption>
            <thead>
              <tr>
                <th scope="col">Address</th>
                <th scope="col">Read by</th>
                <th scope="col">By a public link, if this part is released</th>
              </tr>
            </thead>
            <tbody>
              {doors.map(({ address, asks, part }) => (
                <tr key={address}>
                  <th scope="row">{address}</th>
                  <td>{isAct(asks) ? actLabels[asks] : otherWords[asks]}</td>
                  <td>{part === undefined ? "–" : releaseParts[part]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </section>
      <section aria-labelledby="actions">
        <h2 id="actions">What each action takes</h2>
        <p>
          Every action is refused to whoever can’t read the project. One that writes a document takes what the role has
          to allow for its kind; the rules of the procedure hold besides, such as that criteria stay as they were
          frozen. Actions stand here under the names that the program has for them, so that its tests can be held
          against this table.
        </p>
        <Scroller label="Actions">
          <table>
            <caption className="visually-hidden">Actions</caption>
            <thead>
              <tr>
                <th scope="col">Action</th>
                <th scope="col">Takes</th>
              </tr>
            </thead>
            <tbody>
              {Object.entries(actions).map(([action, asks]) => (
                <tr key={action}>
                  <th scope="row">{action}</th>
                  <td>{isAct(asks) ? `a role that may ${actLabels[asks]}` : otherWords[asks]}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </section>
    </main>
  );
}
