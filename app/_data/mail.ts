import { createTransport } from "nodemailer";
import { errorFacts } from "#lib/log";
import { installation } from "./installation";
import { log } from "./log";

type Letter = Readonly<{ to: string; subject: string; text: string }>;
type MailServer = Readonly<{ url: string; from: string }>;

const patience = 10_000; // ms, for each step of handing over

/**
 * Sends a letter where the installation has somewhere to send it; false where it has not or where it could not be handed
 * over. Whoever asked is shown the link in any case where that is safe, so nothing rests on mail.
 */
export async function sendMail(letter: Letter): Promise<boolean> {
  const installed = installation();
  return installed.mode === "shared" && installed.mail !== null && handOver(installed.mail, letter);
}

/** Hands a letter to a mail server; false where the server does not take it. */
export async function handOver({ url, from }: MailServer, letter: Letter, tell: typeof log = log): Promise<boolean> {
  try {
    const post = createTransport({
      ...{ url, connectionTimeout: patience, greetingTimeout: patience, socketTimeout: patience },
      ...{ disableFileAccess: true, disableUrlAccess: true },
    });
    await post.sendMail({ from, ...letter });
    return true;
  } catch (problem) {
    // neither the address nor the letter, which holds a link that lets somebody in
    tell("letter-not-sent", errorFacts(problem));
    return false;
  }
}
