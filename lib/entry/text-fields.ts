import { z } from "zod";

/**
 * Text as somebody typed it, with white space at its ends taken off.
 * @param what in words with an article, for instance "a laboratory", as people read it where it is too long
 * @param most characters
 */
export const textField = (what: string, most: number) =>
  z
    .string({ error: `Expected ${what} as text.` })
    .trim()
    .max(most, `Expected ${what} of at most ${most.toLocaleString("en-US")} characters.`);

/** The same where it may be left out; empty then. */
export const keptText = (what: string, most: number) => textField(what, most).default("");

/** The name by which a document or a part of one is found again. @param example one that could stand here */
export const idField = (example: string) =>
  z
    .string({ error: "Expected an id as text." })
    .regex(
      /^[a-z0-9][a-z0-9-]{0,63}$/,
      `Expected an id of lower-case letters, digits and hyphens, for instance “${example}”.`,
    );
