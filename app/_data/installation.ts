import { type Installation, installationFrom } from "#lib/installation";

let known: Installation | undefined;

/**
 * How this server is set up, read once.
 * @throws Error where the settings don't hold, of which the start of the server has told already
 */
export function installation(): Installation {
  if (known !== undefined) return known;
  const read = installationFrom(process.env);
  if (!read.ok) throw new Error(read.problem.map(({ sentence }) => sentence).join(" "));
  known = read.value;
  return known;
}
