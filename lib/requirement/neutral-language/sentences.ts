/** A word, a number or a mark of the text. `key` is what rules look at: small letters, without an ending ’s. */
export type Word = Readonly<{
  text: string;
  key: string;
  start: number;
  end: number;
  kind: "word" | "number" | "mark";
  isCapital: boolean;
}>;

/** A sentence with its words. Hyphens inside compounds are left out, so that “patent-pending” reads as two words. */
export type Sentence = Readonly<{ start: number; end: number; words: readonly Word[]; isHeading: boolean }>;

/** One pass and no way back: letters, digits with their separators, or one other character. */
const piece = /[\p{L}\p{M}]+(?:['’]\p{L}+)?|\d+(?:[.,/]\d+)*|\S/gu;

/** Short forms after which a sentence goes on. */
const goesOn = new Set(
  "no nos art arts sec fig figs para par p pp approx vs e i g cf ed dr mr mrs ms ca max min st".split(" "),
);
/** Short forms that may also end a sentence; it ends where a capital follows. */
const mayEnd = new Set("in ft yd oz lb lbs sq cu hr hrs mm cm m kg etc inc co corp ltd llc u.s dia thk".split(" "));
const companyForms = new Set(["inc", "co", "corp", "ltd", "llc"]);

/** Longest run of words that is looked at as one sentence; a text without stops is cut there. */
const longest = 400;

const hyphens = new Set(["-", "‐", "‑"]);

const keyOf = (text: string) => text.toLowerCase().replace(/['’]s?$/u, "");

function wordsOf(text: string): Word[] {
  const words: Word[] = [];
  for (const { 0: found, index } of text.matchAll(piece)) {
    const kind = /^\d/.test(found) ? "number" : /^\p{L}/u.test(found) ? "word" : "mark";
    const isCapital = kind === "word" && /^\p{Lu}/u.test(found);
    words.push({ text: found, key: keyOf(found), start: index, end: index + found.length, kind, isCapital });
  }
  return words;
}

/** Where most words begin with a capital, as in a heading, nothing can be told from them. */
function isHeading(words: readonly Word[]): boolean {
  const letters = words.filter(({ kind }) => kind === "word");
  return letters.length > 4 && letters.filter(({ isCapital }) => isCapital).length * 2 > letters.length;
}

/** Whether the stop after `before` ends the sentence, as far as the words around it tell. */
function stopEnds(before: Word | undefined, stop: Word, after: Word | undefined): boolean {
  if (after === undefined) return true;
  if (after.start === stop.end) return false;
  if (before === undefined || before.end !== stop.start) return true;
  if (before.kind === "word" && before.text.length === 1 && before.isCapital) return false;
  if (before.kind === "word" && goesOn.has(before.key)) return false;
  if (before.kind === "word" && mayEnd.has(before.key)) return after.isCapital && !companyForms.has(after.key);
  return after.isCapital || after.kind !== "word";
}

/** Whether a line begins an item of its own: “1.1 ”, “A. ”, “2) ”, “- ”, “(a) ”. */
const itemStart = /^[ \t]*(?:\d+(?:\.\d+)+|\d{1,3}[.)]|[A-Za-z][.)]|\([A-Za-z0-9]{1,3}\)|[-•–*]|[A-Z][A-Z ]{3,60}$)/;

/** Offsets at which a new paragraph or item begins. */
function paragraphStarts(text: string): ReadonlySet<number> {
  const starts = new Set<number>();
  let from = 0;
  let afterEmpty = true;
  while (from <= text.length) {
    const feed = text.indexOf("\n", from);
    const to = feed === -1 ? text.length : feed;
    const line = text.slice(from, Math.min(to, from + 80));
    const isEmpty = to - from < 400 && text.slice(from, to).trim() === "";
    if (!isEmpty && (afterEmpty || itemStart.test(line))) starts.add(from);
    afterEmpty = isEmpty;
    if (feed === -1) break;
    from = feed + 1;
  }
  return starts;
}

/** “A.”, “1.1”, “2)” at the head of an item is its number and no sentence. */
function numberingLength(words: readonly Word[], at: number): number {
  const [first, second] = [words[at], words[at + 1]];
  if (first === undefined || second === undefined) return 0;
  if (/^\d+(\.\d+)+$/.test(first.text)) return 1;
  const short =
    (first.kind === "word" && first.text.length === 1) || (first.kind === "number" && first.text.length <= 3);
  return short && /^[.)]$/.test(second.text) && second.start === first.end ? 2 : 0;
}

/**
 * The sentences of a plain text. Section numbering, wrapped lines, decimal numbers and the short forms of
 * specifications do not break a sentence; an empty line or a new item does. Linear in the length of the text.
 */
export function sentencesOf(text: string): readonly Sentence[] {
  const words = wordsOf(text);
  const starts = [...paragraphStarts(text)];
  const sentences: Sentence[] = [];
  let current: Word[] = [];
  let nextStart = 0;
  const close = () => {
    const [first, last] = [current[0], current.at(-1)];
    if (first !== undefined && last !== undefined)
      sentences.push({ start: first.start, end: last.end, words: current, isHeading: isHeading(current) });
    current = [];
  };
  for (let at = 0; at < words.length; at++) {
    const word = words[at] as Word;
    let begins = false;
    while (nextStart < starts.length && (starts[nextStart] as number) <= word.start) {
      begins = true;
      nextStart++;
    }
    if (begins) {
      close();
      const numbering = numberingLength(words, at);
      if (numbering > 0) {
        at += numbering - 1;
        continue;
      }
    }
    const joins = hyphens.has(word.text) && words[at - 1]?.end === word.start && words[at + 1]?.start === word.end;
    if (!joins) current.push(word);
    const stops = /^[.!?]$/.test(word.text) && stopEnds(words[at - 1], word, words[at + 1]);
    if (stops || current.length >= longest) close();
  }
  close();
  return sentences;
}
