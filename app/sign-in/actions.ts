"use server";
import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { z } from "zod";
import type { Reply } from "../_components/reply-form";
import { people } from "../_data/asker";
import { browserOfRequest, forgetSignIn, keepSignIn, placeOfRequest } from "../_data/browser";
import { installation } from "../_data/installation";
import { log } from "../_data/log";
import { sendMail } from "../_data/mail";
import { done, notDone, problemsOf, textIn, waitWords } from "../_data/reply";

/** An address within Evenfield, never elsewhere. */
const withinHere = (address: string): string => (/^\/(?![/\\])[^\s\\]*$/.test(address) ? address : "/");

const signInForm = z.object({
  email: z.string().trim().min(1, "Write the address of your mail.").max(254, "Expected at most 254 characters."),
  password: z.string().min(1, "Write your password.").max(1024, "Expected at most 1,024 characters."),
});

/** Signs somebody in, or says that address and password don’t belong together; never which of the two is wrong. */
export async function signIn(to: string, _before: Reply, form: FormData): Promise<Reply> {
  const read = signInForm.safeParse({ email: textIn(form, "email"), password: textIn(form, "password") });
  if (!read.success) return notDone(problemsOf(read.error), form);
  const outcome = await (await people()).accounts.signIn({
    ...read.data,
    from: await placeOfRequest(),
    browser: await browserOfRequest(),
  });
  switch (outcome.kind) {
    case "wait":
      log("sign-in-throttled");
      return notDone(waitWords(outcome.seconds), form);
    case "unknown":
      log("sign-in-refused");
      return notDone("Nobody signs in with this address and this password. Read both once more.", form);
    case "signed-in":
      log("signed-in");
      await keepSignIn(outcome.cookie);
      redirect(withinHere(z.string().parse(to)));
  }
}

export async function signOut(): Promise<void> {
  const kept = (await cookies()).toString();
  await (await people()).accounts.signOut(kept);
  await forgetSignIn();
  redirect("/sign-in");
}

/** Sends a link for a new password, where somebody of this address signs in here; the answer is the same where nobody does. */
export async function askForNewPassword(_before: Reply, form: FormData): Promise<Reply> {
  const email = z.string().trim().min(1, "Write the address of your mail.").max(254).safeParse(textIn(form, "email"));
  if (!email.success) return notDone(problemsOf(email.error), form);
  const installed = installation();
  if (installed.mode === "local" || installed.mail === null)
    return notDone("This server sends no mail. Ask an administrator of your organisation for a link.", form);
  const asked = await (await people()).accounts.forgotten(email.data);
  // not awaited, so that the time of the answer does not tell whether the address is known
  if (asked !== null)
    void sendMail({
      to: asked.person.email,
      subject: "A new password for Evenfield",
      text: `${asked.person.name},\n\nsomebody, probably you, asked for a new password at ${installed.address}. Set it here within an hour:\n\n${installed.address}/come-in/${asked.token}\n\nIf it was not you, do nothing: your password stays as it is.\n`,
    });
  return done("If somebody of this address signs in here, a letter with a link is on its way. It serves for an hour.");
}
