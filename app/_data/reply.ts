import type { z } from "zod";
import type { Reply } from "../_components/reply-form";

/** The texts of a form, without what is secret; several of one name as lines. */
function typedIn(form: FormData): Readonly<Record<string, string>> {
  const names = [...new Set(form.keys())].filter((name) => !/password/i.test(name) && !name.startsWith("$"));
  return Object.fromEntries(names.map((name) => [name, form.getAll(name).filter(isText).join("\n")]));
}

const isText = (value: FormDataEntryValue): value is string => typeof value === "string";

/** A text of a form; empty where it is missing. */
export const textIn = (form: FormData, name: string): string => {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
};

export const notDone = (problem: string, form: FormData): Reply => ({
  ...{ problem, done: "", link: "" },
  typed: typedIn(form),
});

export const done = (sentence: string, link = ""): Reply => ({ problem: "", done: sentence, link, typed: {} });

/** What a schema has against a form, in sentences. */
export const problemsOf = (error: z.ZodError): string =>
  [...new Set(error.issues.map(({ message }) => message))].join(" ");

/** How long somebody has to wait, in words. */
export function waitWords(seconds: number): string {
  const minutes = Math.ceil(seconds / 60);
  const time = seconds < 90 ? `${seconds} seconds` : `${minutes} minutes`;
  return `Too many attempts failed. Try again in ${time}, or ask for a new password.`;
}
