import type { Word } from "./sentences";

const small =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

function smallCount(key: string): number | null {
  const at = small.indexOf(key);
  if (at >= 0) return at;
  const ten = tens.indexOf(key);
  return ten >= 0 ? (ten + 2) * 10 : null;
}

const plain = /^\d+(?:,\d{3})*(?:\.\d+)?$/;
const fraction = /^(\d+)\/(\d+)$/;

/** Number in digits: “11,460”, “2.2375”, “3/8”; null where the separators allow no one reading. */
function digits(text: string): number | null {
  const [, above, below] = fraction.exec(text) ?? [];
  if (above !== undefined && below !== undefined) return Number(below) === 0 ? null : Number(above) / Number(below);
  return plain.test(text) ? Number(text.replaceAll(",", "")) : null;
}

/** The number that begins at a word, in digits or in words up to thousands, with how many words it takes; null where none. */
export function numberAt(words: readonly Word[], at: number): Readonly<{ value: number; length: number }> | null {
  const [word, next] = [words[at], words[at + 1]];
  if (word === undefined) return null;
  if (word.kind === "number") {
    const value = digits(word.text);
    if (value === null) return null;
    const part =
      next?.kind === "number" && /^\d+$/.test(word.text) && fraction.test(next.text) ? digits(next.text) : null;
    return part === null ? { value, length: 1 } : { value: value + part, length: 2 };
  }
  const value = word.kind === "word" ? smallCount(word.key) : null;
  if (value === null) return null;
  if (next?.key === "hundred") return { value: value * 100, length: 2 };
  if (next?.key === "thousand") return { value: value * 1000, length: 2 };
  const unit = next === undefined || value < 20 ? null : smallCount(next.key);
  return unit !== null && unit > 0 && unit < 10 ? { value: value + unit, length: 2 } : { value, length: 1 };
}
