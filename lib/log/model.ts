/** What a server tells of itself. Each is told in facts that name nobody: no address, no text, no link, no id of a person. */
export const events = {
  "request-failed": "error",
  printed: "warning",
  "letter-not-sent": "warning",
  "sign-in-refused": "warning",
  "sign-in-throttled": "warning",
  "signed-in": "info",
  "password-set": "info",
  invited: "info",
  "organisation-changed": "info",
  "released-to-public": "info",
  swept: "info",
  "sweep-failed": "warning",
} as const;

export type LogEvent = keyof typeof events;

/**
 * Facts beside an event. A text is kept only where it is the name of something in the program: letters, digits and a few
 * marks, no blank and no “@”, so that neither a sentence nor an address can get in by mistake.
 */
export type LogFacts = Readonly<Record<string, string | number | boolean | undefined>>;
