"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { explainPassword } from "#lib/password";
import type { Reply } from "../_components/reply-form";
import { currentPerson, people } from "../_data/asker";
import { forgetSignIn, placeOfRequest } from "../_data/browser";
import { log } from "../_data/log";
import { done, notDone, textIn, waitWords } from "../_data/reply";

/** Ends one of one’s own sign-ins, on another device or here. */
export async function endSignIn(id: string, _before: Reply, form: FormData): Promise<Reply> {
  const who = await currentPerson();
  const isOver = await (await people()).accounts.endSignIn(who, z.string().max(64).parse(id));
  if (id === who.session.id) {
    await forgetSignIn();
    redirect("/sign-in");
  }
  revalidatePath("/account");
  return isOver ? done("Signed out there.") : notDone("That sign-in is over already.", form);
}

/** Sets another password; whoever is signed in elsewhere has to sign in anew. */
export async function changePassword(_before: Reply, form: FormData): Promise<Reply> {
  const who = await currentPerson();
  const [current, next] = [textIn(form, "current-password"), textIn(form, "new-password")];
  if (next !== textIn(form, "new-password-again"))
    return notDone("The two new passwords are not the same. Type them again.", form);
  const from = await placeOfRequest();
  const outcome = await (await people()).accounts.changePassword(who, { current, next, from });
  switch (outcome.kind) {
    case "wait":
      log("sign-in-throttled");
      return notDone(waitWords(outcome.seconds), form);
    case "wrong":
      log("sign-in-refused");
      return notDone("The password that you have now is another one. Type it again.", form);
    case "password":
      return notDone(explainPassword(outcome.problem), form);
    case "changed":
      log("password-set");
      revalidatePath("/account");
      return done("The password is changed. Everywhere else you are signed out.");
  }
}
