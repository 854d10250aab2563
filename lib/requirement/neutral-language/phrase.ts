import type { Match } from "./model";
import { isName, isPublicWord, isTradeWord } from "./names";
import type { Sentence, Word } from "./sentences";
import { wordClasses } from "./word-classes";
import { numberAt } from "./written-count";

/**
 * One part of a phrase. Phrases are written as text: words with `|` between alternatives, `{firm}` for every word of a class,
 * an ending `*` for any ending,
 * `?` behind a part that may be missing, `~3` for up to three words of any kind, `#` for a number, `#>=11` for one from
 * 11 up, `@name` for a run of capitalised words that is no role or standard, `@laboratory` for such a run that names a
 * laboratory, `@maker` for a run of two or more that is no term of the trade and no public body, `@code` for a token of capitals or digits.
 */
type Part = Readonly<
  | { kind: "words"; exact: ReadonlySet<string>; beginnings: readonly string[]; optional: boolean }
  | { kind: "gap"; most: number }
  | { kind: "number"; least: number }
  | { kind: "name"; of: "anybody" | "laboratory" | "maker" }
  | { kind: "code" }
>;

type Phrase = readonly Part[];

/** “{firm}” stands for every word of that class. @throws RangeError for a class that is not there */
function ofClass(word: string): readonly string[] {
  const name = /^\{(.+)\}$/.exec(word)?.[1];
  if (name === undefined) return [word];
  const members = wordClasses[name];
  if (members === undefined) throw new RangeError(`no class of words ${name}`);
  return members;
}

function partOf(written: string): Part {
  if (/^~\d$/.test(written)) return { kind: "gap", most: Number(written.slice(1)) };
  if (written === "#") return { kind: "number", least: Number.NEGATIVE_INFINITY };
  if (written.startsWith("#>=")) return { kind: "number", least: Number(written.slice(3)) };
  if (written === "@name") return { kind: "name", of: "anybody" };
  if (written === "@laboratory" || written === "@maker")
    return { kind: "name", of: written === "@maker" ? "maker" : "laboratory" };
  if (written === "@code") return { kind: "code" };
  const optional = written.length > 1 && written.endsWith("?");
  const alternatives = (optional ? written.slice(0, -1) : written).split("|").flatMap(ofClass);
  const beginnings = alternatives
    .filter((word) => word.length > 1 && word.endsWith("*"))
    .map((word) => word.slice(0, -1));
  return {
    kind: "words",
    exact: new Set(alternatives.filter((word) => !word.endsWith("*") || word === "*")),
    beginnings,
    optional,
  };
}

const phraseOf = (written: string): Phrase => written.split(" ").map(partOf);

/** Phrases by what they begin with, so that each word of a text is held against few of them. */
export type PhraseList = Readonly<{
  byFirstWord: ReadonlyMap<string, readonly Phrase[]>;
  byNumber: readonly Phrase[];
  byName: readonly Phrase[];
  others: readonly Phrase[];
}>;

export function phraseList(written: readonly string[]): PhraseList {
  const byFirstWord = new Map<string, Phrase[]>();
  const [byNumber, byName, others]: [Phrase[], Phrase[], Phrase[]] = [[], [], []];
  for (const phrase of written.map(phraseOf)) {
    const [first] = phrase;
    if (first?.kind === "number") byNumber.push(phrase);
    else if (first?.kind === "name") byName.push(phrase);
    else if (first?.kind !== "words" || first.optional || first.beginnings.length > 0) others.push(phrase);
    else for (const key of first.exact) byFirstWord.set(key, [...(byFirstWord.get(key) ?? []), phrase]);
  }
  return { byFirstWord, byNumber, byName, others };
}

const isLaboratoryWord = (word: Word) => /^(laborator(y|ies)|labs?|institute|testing)$/.test(word.key);

/** Longest name that is followed, in words. */
const longestName = 6;

/** Words of a run of capitals from `at` on that names somebody; 0 where none begins there. */
function nameLength({ words }: Sentence, at: number, laboratory: boolean): number {
  let length = 0;
  let names = false;
  let tests = false;
  while (length < longestName) {
    const word = words[at + length];
    if (word === undefined) break;
    const capital = word.isCapital;
    if (!capital && !(length > 0 && word.kind === "number")) break;
    if (capital && isLaboratoryWord(word)) tests = true;
    else if (capital && isName(word.key) && !isTradeWord(word.key)) names = true;
    else if (length === 0 && !isTradeWord(word.key)) return 0;
    length++;
  }
  // a capital alone at the head of a sentence says nothing
  if (at === 0 && length < 2) return 0;
  return names && (!laboratory || tests) ? length : 0;
}

/** Words of a run of two or more capitals inside a sentence that may be a maker or a product; 0 where none begins there. */
function makerLength(sentence: Sentence, at: number): number {
  const length = at === 0 || sentence.isHeading ? 0 : nameLength(sentence, at, false);
  const run = sentence.words.slice(at, at + length).filter(({ kind }) => kind === "word");
  if (run.length < 2 || run.some(({ key }) => isPublicWord(key))) return 0;
  return run.some(({ key, text }) => isName(key) && !isTradeWord(key) && /\p{Ll}/u.test(text)) ? length : 0;
}

const isCode = ({ text, kind }: Word): boolean => kind === "number" || /^[\p{Lu}]{1,4}$/u.test(text);

/** Index of the first word after the phrase, trying the longest way for gaps last; −1 where it does not stand there. */
function endOf(phrase: Phrase, from: number, sentence: Sentence, at: number, count: () => void): number {
  count();
  const part = phrase[from];
  if (part === undefined) return at;
  if (part.kind === "gap") {
    for (let skipped = 0; skipped <= part.most; skipped++) {
      const end = endOf(phrase, from + 1, sentence, at + skipped, count);
      if (end >= 0) return end;
      if (sentence.words[at + skipped]?.text === ";") return -1;
    }
    return -1;
  }
  const length = lengthAt(part, sentence, at);
  if (length > 0) {
    const end = endOf(phrase, from + 1, sentence, at + length, count);
    if (end >= 0) return end;
  }
  return part.kind === "words" && part.optional ? endOf(phrase, from + 1, sentence, at, count) : -1;
}

/** How many words one part takes at a place; 0 where it does not stand there. */
function lengthAt(part: Exclude<Part, { kind: "gap" }>, sentence: Sentence, at: number): number {
  const word = sentence.words[at];
  if (word === undefined) return 0;
  switch (part.kind) {
    case "words":
      return part.exact.has(word.key) || part.beginnings.some((beginning) => word.key.startsWith(beginning)) ? 1 : 0;
    case "number": {
      const number = numberAt(sentence.words, at);
      return number !== null && number.value >= part.least ? number.length : 0;
    }
    case "name":
      return part.of === "maker" ? makerLength(sentence, at) : nameLength(sentence, at, part.of === "laboratory");
    case "code":
      return isCode(word) ? 1 : 0;
  }
}

const none: readonly Phrase[] = [];

/** Places where one of the phrases stands. Each place costs a bounded number of steps, since gaps and names are short. */
export function placesOf(list: PhraseList, sentence: Sentence, count: () => void): readonly Match[] {
  const places: Match[] = [];
  const look = (phrases: readonly Phrase[], at: number) => {
    for (const phrase of phrases) {
      const end = endOf(phrase, 0, sentence, at, count);
      if (end > at) places.push({ first: at, last: end - 1 });
    }
  };
  const { words } = sentence;
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    look(list.byFirstWord.get(word.key) ?? none, at);
    if (list.byNumber.length > 0 && numberAt(words, at) !== null) look(list.byNumber, at);
    if (list.byName.length > 0 && word.isCapital) look(list.byName, at);
    look(list.others, at);
  }
  return places;
}
