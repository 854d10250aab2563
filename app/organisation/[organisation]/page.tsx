import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { firstOrganisation, type Member } from "#lib/store";
import { ReplyForm } from "../../_components/reply-form";
import blocks from "../../_components/rows-as-blocks.module.css";
import { Scroller } from "../../_components/scroller";
import { SignedInLine } from "../../_components/signed-in-line";
import { tableRoles } from "../../_components/table-roles";
import { currentPerson, people } from "../../_data/asker";
import { addOrganisation, endMembership, invite, newPasswordLink, renameOrganisation, setMemberRole } from "./actions";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "People of the organisation" };

export default async function OrganisationPage({ params }: PageProps<"/organisation/[organisation]">) {
  const { organisation: id } = await params;
  const who = await currentPerson();
  const organisation = who.organisations.find((one) => one.id === id);
  const members = await (await people()).organisations.members(id, who.person.id);
  if (organisation === undefined || members === null) notFound();
  const { administers } = organisation;
  return (
    <main id="main" className={styles.page}>
      <SignedInLine who={who} />
      <h1>{organisation.name}</h1>
      <p className="lede">
        Who belongs to this organisation. A member sees the projects whose list of people names them; an administrator
        sees all, begins projects and invites.
      </p>
      <section aria-labelledby="members">
        <h2 id="members">Members</h2>
        <Scroller label="Members">
          <table {...tableRoles.table} className={blocks.table}>
            <caption className="visually-hidden">Members</caption>
            <thead {...tableRoles.rows}>
              <tr {...tableRoles.row}>
                {["Name", "Address of mail", "Is", ...(administers ? ["Change"] : [])].map((head) => (
                  <th key={head} {...tableRoles.columnHead} scope="col">
                    {head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody {...tableRoles.rows}>
              {members.map((member) => (
                <tr key={member.id} {...tableRoles.row}>
                  <th {...tableRoles.rowHead} scope="row">
                    {member.name}
                    {member.isYou ? ", you" : ""}
                  </th>
                  <td {...tableRoles.cell}>{member.email}</td>
                  <td {...tableRoles.cell}>
                    {member.role === "administrator" ? "administrator" : "member"}
                    {member.hasPassword ? "" : ", invited, not here yet"}
                  </td>
                  {administers ? (
                    <td {...tableRoles.cell}>
                      <div className={styles.changes}>
                        <MemberChanges organisation={id} member={member} />
                      </div>
                    </td>
                  ) : null}
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </section>
      {administers ? (
        <section aria-labelledby="invite">
          <h2 id="invite">Invite somebody</h2>
          <p>
            They get a link by which they choose a password. Afterwards list them in the projects they shall work on,
            with their roles.
          </p>
          <ReplyForm
            action={invite.bind(null, id)}
            label="Invite somebody"
            button="Invite"
            fields={[
              { name: "name", label: "Name", hint: "As it shall stand in the record.", longest: 80 },
              { name: "email", label: "Address of mail", type: "email", longest: 254 },
            ]}
            choice={{
              ...{ name: "role", legend: "The person is", choose: "one", chosen: "member" },
              choices: [
                { value: "member", label: "a member" },
                { value: "administrator", label: "an administrator" },
              ],
            }}
          />
        </section>
      ) : null}
      {administers ? (
        <section aria-labelledby="name">
          <h2 id="name">Name</h2>
          <ReplyForm
            action={renameOrganisation.bind(null, id)}
            label="Name of the organisation"
            button="Rename"
            fields={[{ name: "name", label: "Name of the organisation", value: organisation.name }]}
          />
        </section>
      ) : null}
      {administers && id === firstOrganisation ? (
        <section aria-labelledby="other">
          <h2 id="other">Another owner on this server</h2>
          <p>
            Its projects and people are kept apart from yours: nobody of one organisation sees anything of another
            without belonging to both.
          </p>
          <ReplyForm
            action={addOrganisation}
            label="Another owner on this server"
            button="Add the organisation"
            fields={[{ name: "name", label: "Name of the other organisation" }]}
          />
        </section>
      ) : null}
    </main>
  );
}

function MemberChanges({
  organisation,
  member: { id, name, role, hasPassword },
}: {
  organisation: string;
  member: Member;
}) {
  const other = role === "administrator" ? "member" : "administrator";
  return (
    <>
      <ReplyForm
        action={setMemberRole.bind(null, organisation, id, other)}
        label={`${name}: make ${other}`}
        button={other === "administrator" ? "Make administrator" : "Make plain member"}
        fields={[]}
        isPlain
      />
      {hasPassword ? (
        <ReplyForm
          action={newPasswordLink.bind(null, organisation, id)}
          label={`${name}: new password`}
          button="Link for a new password"
          fields={[]}
          isPlain
        />
      ) : null}
      <ReplyForm
        action={endMembership.bind(null, organisation, id)}
        label={`${name}: end membership`}
        button="End membership"
        fields={[]}
        isPlain
      />
    </>
  );
}
