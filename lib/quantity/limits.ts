/** Words and signs around a figure that change what it says. */
export type Qualifier = "at-least" | "at-most" | "about" | "between" | "from";

/** Before the figure. "More than 9" is read as "at least 9": no measurement of the trade tells them apart. */
const before: Readonly<Record<string, Qualifier>> = {
  ">=": "at-least",
  ">": "at-least",
  min: "at-least",
  minimum: "at-least",
  "minimum of": "at-least",
  "at least": "at-least",
  "a minimum of": "at-least",
  "not less than": "at-least",
  "no less than": "at-least",
  "not under": "at-least",
  "not below": "at-least",
  "more than": "at-least",
  "greater than": "at-least",
  over: "at-least",
  above: "at-least",
  "<=": "at-most",
  "<": "at-most",
  max: "at-most",
  maximum: "at-most",
  "maximum of": "at-most",
  "a maximum of": "at-most",
  "at most": "at-most",
  "not more than": "at-most",
  "no more than": "at-most",
  "not greater than": "at-most",
  "not over": "at-most",
  "not above": "at-most",
  "not to exceed": "at-most",
  "less than": "at-most",
  "up to": "at-most",
  under: "at-most",
  below: "at-most",
  "~": "about",
  approx: "about",
  approximately: "about",
  about: "about",
  around: "about",
  circa: "about",
  ca: "about",
  nominal: "about",
  nominally: "about",
  between: "between",
  from: "from",
};

const after: Readonly<Record<string, Qualifier>> = {
  min: "at-least",
  minimum: "at-least",
  "or more": "at-least",
  "or greater": "at-least",
  "or above": "at-least",
  "and above": "at-least",
  max: "at-most",
  maximum: "at-most",
  "or less": "at-most",
  "or fewer": "at-most",
  "or below": "at-most",
  "and below": "at-most",
  approx: "about",
  approximately: "about",
  nominal: "about",
};

/** Words that end a unit, because they start what comes after the figure. */
export const endsUnit = (word: string) =>
  /^(to|and|or|min|minimum|max|maximum|approx|approximately|nominal)$/i.test(word);

/** The qualifier at an index, and the index after it with its point, colon and spaces; null where there is none. */
type FoundQualifier = Readonly<{ qualifier: Qualifier; end: number }> | null;

export const qualifierBefore = (text: string, start: number): FoundQualifier => found(before, text, start);
export const qualifierAfter = (text: string, start: number): FoundQualifier => found(after, text, start);

const mostWords = 3;

function found(phrases: Readonly<Record<string, Qualifier>>, text: string, start: number): FoundQualifier {
  const sign = /^(>=|<=|>|<|~)/.exec(text.slice(start, start + 2))?.[0];
  if (sign !== undefined) return ended(phrases, sign, text, start + sign.length);
  const words = /^[a-z]+(?: [a-z]+){0,2}/i.exec(text.slice(start))?.[0].toLowerCase().split(" ") ?? [];
  for (let count = Math.min(mostWords, words.length); count > 0; count -= 1) {
    const phrase = words.slice(0, count).join(" ");
    const hit = ended(phrases, phrase, text, start + phrase.length);
    if (hit !== null) return hit;
  }
  return null;
}

function ended(
  phrases: Readonly<Record<string, Qualifier>>,
  phrase: string,
  text: string,
  end: number,
): FoundQualifier {
  const qualifier = Object.hasOwn(phrases, phrase) ? phrases[phrase] : undefined;
  if (qualifier === undefined) return null;
  const trailing = /^\.?:? ?/.exec(text.slice(end, end + 3))?.[0].length ?? 0;
  return { qualifier, end: end + trailing };
}
