import { createTransport } from "nodemailer";
import { errorFacts } from "#lib/log";
import { installation } from "./installation";
import { log } from "./log";

const patience = 10_000;

/**
 * Sends a letter where the installation has somewhere to send it; false where it has not or where it could not be handed
 * over. Whoever asked is shown the link in any case where that is safe, so nothing rests on mail.
 */
export async function sendMail(letter: Readonly<{ to: string; subject: string; text: string }>): Promise<boolean> {
  const installed = installation();
  if (installed.mode === "local" || installed.mail === null) return false;
  const { url, from } = installed.mail;
  try {
    const post = createTransport({ url, connectionTimeout: patience, socketTimeout: patience });
    await post.sendMail({ from, ...letter });
    return true;
  } catch (problem) {
    // neither the address nor the letter, which holds a link that lets somebody in
    log("letter-not-sent", errorFacts(problem));
    return false;
  }
}
