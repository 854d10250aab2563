import { z } from "zod";
import type { Result } from "#lib/quantity";
import { parseYears, type YearsAsked } from "./parse-years";

export const shorterThan = (most: number) =>
  [most, `Expected at most ${most.toLocaleString("en-US")} characters.`] as const;

/** Text that has to be there; the message asks for it. */
export const ask = (message: string) => z.string({ error: message }).max(...shorterThan(200));

/** Text that may be left empty. */
export const remark = (most: number) =>
  z
    .string()
    .max(...shorterThan(most))
    .default("");

/** Text that is read into a model value, or an issue with the sentence that helps. */
export const read =
  <T>(parse: (asEntered: string) => Result<T, string>) =>
  (asEntered: string, context: z.core.$RefinementCtx): T => {
    const parsed = parse(asEntered);
    if (parsed.ok) return parsed.value;
    context.addIssue({ code: "custom", message: parsed.problem });
    return z.NEVER;
  };

/** The same for text that may be left out or left empty: null then. */
export const optional = <T>(parse: (asEntered: string) => Result<T, string>, most = 200) =>
  z
    .string()
    .max(...shorterThan(most))
    .nullable()
    .default(null)
    .transform((asEntered, context) =>
      asEntered === null || asEntered.trim() === "" ? null : read(parse)(asEntered, context),
    );

export const years = (asked: YearsAsked) =>
  ask(`Write ${asked.what} as a whole number of years.`).transform(read((asEntered) => parseYears(asEntered, asked)));

export const laterYear = { low: 1, high: 100 };

export const optionalYear = (what: string) => optional((asEntered) => parseYears(asEntered, { what, ...laterYear }));

/** The name of an entry, for reference from elsewhere. */
export const reference = (message: string) =>
  ask(message).regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
    error: "Expected small letters, digits and single hyphens, for example “carpet-and-infill”.",
  });

export const label = (message: string) =>
  ask(message)
    .trim()
    .min(1, message)
    .max(...shorterThan(120));

/** Text that has to be there and may be empty: null then. */
export const mayLack = <T>(
  parse: (asEntered: string) => Result<T, string>,
  message = "Expected a text, empty or not.",
) => ask(message).transform((asEntered, context) => (asEntered.trim() === "" ? null : read(parse)(asEntered, context)));
