"use server";
import { redirect } from "next/navigation";
import { z } from "zod";
import { explainPassword } from "#lib/password";
import type { Reply } from "../../_components/reply-form";
import { people } from "../../_data/asker";
import { browserOfRequest, keepSignIn } from "../../_data/browser";
import { log } from "../../_data/log";
import { notDone, problemsOf, textIn } from "../../_data/reply";

const firstOwner = z.object({
  name: z.string().trim().min(1, "Write your name.").max(80, "Expected a name of at most 80 characters."),
  email: z.email({ error: "Write the address of your mail, such as name@district.example." }).max(254),
  organisation: z
    .string()
    .trim()
    .min(1, "Name the organisation that owns the projects.")
    .max(200, "Expected at most 200 characters."),
});

/** Sets the password of whoever has the link, and signs them in. */
export async function comeIn(token: string, _before: Reply, form: FormData): Promise<Reply> {
  const { accounts } = await people();
  const link = z.string().max(100).parse(token);
  const way = await accounts.wayIn(link);
  if (way === null) return notDone("This link was used already, or its time is over. Ask for another.", form);
  const password = textIn(form, "password");
  if (password !== textIn(form, "password-again"))
    return notDone("The two passwords are not the same. Type them again.", form);
  const said = {
    name: textIn(form, "name"),
    email: textIn(form, "email").trim(),
    organisation: textIn(form, "organisation"),
  };
  const owner = firstOwner.safeParse(said);
  if (way.purpose === "first-owner" && !owner.success) return notDone(problemsOf(owner.error), form);
  const outcome = await accounts.enter(link, { password, ...(owner.data ?? said) }, await browserOfRequest());
  switch (outcome.kind) {
    case "link-spent":
      return notDone("This link was used already, or its time is over. Ask for another.", form);
    case "password":
      return notDone(explainPassword(outcome.problem), form);
    case "signed-in":
      log("password-set");
      await keepSignIn(outcome.cookie);
      redirect("/");
  }
}
