"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { MemberOutcome } from "#lib/store";
import type { Reply } from "../../_components/reply-form";
import { currentPerson, people } from "../../_data/asker";
import { installation } from "../../_data/installation";
import { log } from "../../_data/log";
import { sendMail } from "../../_data/mail";
import { done, notDone, problemsOf, textIn } from "../../_data/reply";

const id = z.string().max(64);
const role = z.enum(["administrator", "member"], { error: "Choose what the person is: a member or an administrator." });
const organisationName = z
  .string()
  .trim()
  .min(1, "Name the organisation.")
  .max(200, "Expected a name of at most 200 characters.");

const sentences: Readonly<Record<Exclude<MemberOutcome["kind"], "done">, string>> = {
  "not-allowed": "Only an administrator of this organisation may do this.",
  "no-such-member": "This person is no longer a member of the organisation.",
  "last-administrator": "The organisation would be left without an administrator. Make somebody else one first.",
  "belongs-elsewhere":
    "This person belongs to another organisation too, which a link would open as well. They ask for a new password themselves, at the page for signing in.",
};

/** What became of a change, as whoever asked is answered; the page shows it. */
function answered(organisation: string, outcome: MemberOutcome, sentence: string, form: FormData): Reply {
  revalidatePath(`/organisation/${organisation}`);
  if (outcome.kind === "done") log("organisation-changed");
  return outcome.kind === "done" ? done(sentence) : notDone(sentences[outcome.kind], form);
}

const linkTo = (token: string): string => {
  const installed = installation();
  return `${installed.mode === "shared" ? installed.address : ""}/come-in/${token}`;
};

const invitation = z.object({
  name: z.string().trim().min(1, "Write the person’s name.").max(80, "Expected a name of at most 80 characters."),
  email: z.email({ error: "Write the address of the person’s mail, such as name@district.example." }).max(254),
  role,
});

/** Invites somebody: the link is shown to whoever invites, and sent where mail is set up. */
export async function invite(organisation: string, _before: Reply, form: FormData): Promise<Reply> {
  const { person: by } = await currentPerson();
  const said = { name: textIn(form, "name"), email: textIn(form, "email").trim(), role: textIn(form, "role") };
  const read = invitation.safeParse(said);
  if (!read.success) return notDone(problemsOf(read.error), form);
  const outcome = await (await people()).organisations.invite(id.parse(organisation), read.data, by.id);
  revalidatePath(`/organisation/${organisation}`);
  switch (outcome.kind) {
    case "not-allowed":
      return notDone(sentences["not-allowed"], form);
    case "already-here":
      return notDone(`${outcome.person.name} is a member already, under this address.`, form);
    case "not-here-yet":
      return notDone(
        "Another organisation on this server invited this address, and nobody has come in by that invitation yet. Invite them once they have.",
        form,
      );
    case "joined":
      return done(`${outcome.person.name} signs in here already and now belongs to this organisation too.`);
    case "invited": {
      log("invited");
      const link = linkTo(outcome.token);
      const isSent = await sendMail({
        to: outcome.person.email,
        subject: "An invitation to Evenfield",
        text: `${outcome.person.name},\n\n${by.name} invites you to work on synthetic-turf projects in Evenfield. Choose a password here within a week:\n\n${link}\n`,
      });
      const once = "it serves once, within a week:";
      return done(
        isSent
          ? `The invitation was sent. It is also this link, for ${outcome.person.name} alone; ${once}`
          : `Give this link to ${outcome.person.name} alone; ${once}`,
        link,
      );
    }
  }
}

/** A link by which a member sets a new password, for whoever can’t sign in. */
export async function newPasswordLink(
  organisation: string,
  person: string,
  _before: Reply,
  form: FormData,
): Promise<Reply> {
  const { person: by } = await currentPerson();
  const outcome = await (await people()).organisations.newPassword(id.parse(organisation), id.parse(person), by.id);
  if (outcome.kind === "link")
    return done(
      `Give this link to ${outcome.person.name} alone; it serves once, within an hour:`,
      linkTo(outcome.token),
    );
  if (outcome.kind === "done") throw new Error("a link that was not made");
  return notDone(sentences[outcome.kind], form);
}

export async function setMemberRole(
  organisation: string,
  person: string,
  wanted: string,
  _before: Reply,
  form: FormData,
): Promise<Reply> {
  const { person: by } = await currentPerson();
  const { organisations } = await people();
  const outcome = await organisations.setRole(id.parse(organisation), id.parse(person), role.parse(wanted), by.id);
  return answered(organisation, outcome, "Changed.", form);
}

/** Takes somebody out of the organisation at once. */
export async function endMembership(
  organisation: string,
  person: string,
  _before: Reply,
  form: FormData,
): Promise<Reply> {
  const { person: by } = await currentPerson();
  const outcome = await (await people()).organisations.end(id.parse(organisation), id.parse(person), by.id);
  return answered(organisation, outcome, "No longer a member.", form);
}

export async function renameOrganisation(organisation: string, _before: Reply, form: FormData): Promise<Reply> {
  const { person: by } = await currentPerson();
  const name = organisationName.safeParse(textIn(form, "name"));
  if (!name.success) return notDone(problemsOf(name.error), form);
  const outcome = await (await people()).organisations.rename(id.parse(organisation), name.data, by.id);
  return answered(organisation, outcome, "Renamed.", form);
}

/** Adds another owner to this server; whoever administers the first organisation may. */
export async function addOrganisation(_before: Reply, form: FormData): Promise<Reply> {
  const { person: by } = await currentPerson();
  const name = organisationName.safeParse(textIn(form, "name"));
  if (!name.success) return notDone(problemsOf(name.error), form);
  const outcome = await (await people()).organisations.add(name.data, by.id);
  if (outcome.kind === "not-allowed")
    return notDone("Only an administrator of this server’s first organisation may add another.", form);
  redirect(`/organisation/${outcome.id}`);
}
