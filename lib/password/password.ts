import { dictionary } from "@zxcvbn-ts/language-common";

/** Characters a password has at least and at most. Any characters count, spaces too; nothing is asked of their kinds. */
export const passwordLength = { least: 12, most: 128 } as const;

/** What keeps a text from serving as a password. */
export type PasswordProblem = Readonly<
  | { kind: "too-short"; characters: number }
  | { kind: "too-long"; characters: number }
  | { kind: "common" }
  | { kind: "says-who" }
  | { kind: "little-changes" }
>;

const common = new Set<string>(dictionary["passwords-common"]);

/**
 * Why a password is not taken; null where it is. Long, not among those that leaked most often, with or without figures and
 * marks around or written twice, and not made of whose it is. No rules of composition, as they lead to worse ones.
 * @param about texts that say who somebody is or what this is: name, address of mail
 * @source NIST SP 800-63B section 5.1.1.2; OWASP ASVS 5.0 section 6.2
 */
export function passwordProblem(password: string, about: readonly string[]): PasswordProblem | null {
  const characters = [...password.normalize("NFKC")].length;
  if (characters < passwordLength.least) return { kind: "too-short", characters };
  if (characters > passwordLength.most) return { kind: "too-long", characters };
  const folded = password.normalize("NFKC").toLowerCase();
  if (new Set(folded).size < 5) return { kind: "little-changes" };
  if ([folded, core(folded)].some((text) => common.has(text) || common.has(half(text)))) return { kind: "common" };
  const said = about.flatMap((text) => text.toLowerCase().split(/[^\p{L}\p{N}]+/u)).filter((word) => word.length >= 4);
  const left = said.reduce((text, word) => text.replaceAll(word, ""), folded);
  return [...left].length < passwordLength.least / 2 ? { kind: "says-who" } : null;
}

/** Without figures and marks before and behind: “password2026!” is “password”. */
const core = (text: string): string => text.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, "");

/** Half of a text that is written twice; else nothing. */
function half(text: string): string {
  const middle = text.length / 2;
  return text.slice(0, middle) === text.slice(middle) ? text.slice(0, middle) : "";
}

/** Says what is wrong and what is expected; never the password. */
export function explainPassword(problem: PasswordProblem): string {
  switch (problem.kind) {
    case "too-short":
      return `The password has ${problem.characters} characters. Use at least ${passwordLength.least}; several words in a row are easy to remember.`;
    case "too-long":
      return `The password has ${problem.characters} characters. Use at most ${passwordLength.most}.`;
    case "common":
      return "This password is among those that are tried first, as many people use it. Choose another; several words that don’t belong together do well.";
    case "little-changes":
      return "The password repeats few characters. Choose one with more of them; several words in a row do well.";
    case "says-who":
      return "The password is made of your name or address. Choose one that says nothing about you.";
  }
}
