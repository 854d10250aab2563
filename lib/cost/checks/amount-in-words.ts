import { failed, type Result, succeeded } from "#lib/quantity";

const ones: Readonly<Record<string, number>> = {
  ...{ zero: 0, no: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10 },
  ...{ eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18 },
  ...{ nineteen: 19 },
};
const tens: Readonly<Record<string, number>> = {
  ...{ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 },
};
const scales: Readonly<Record<string, number>> = { thousand: 1e3, million: 1e6, billion: 1e9 };
const units = /^(dollars?|euros?|pounds?|sterling|us|u\.s\.|canadian|australian|united|states)$/;
const cents = /^(cents?|pence|pennies)$/;

/**
 * The sum that a bid form writes in words, in cents: "One million two hundred thousand dollars and 50/100" is 120000050.
 * Takes “and”, hyphens, commas and cents as words or as a fraction of a hundred.
 * @returns a sentence that names the word that was not understood
 */
export function amountInWords(text: string): Result<number, string> {
  const words = text
    .toLowerCase()
    .replaceAll(/[(),]|\bonly\b/g, " ")
    .replaceAll(/(\d)\s*\/\s*(\d)/g, "$1/$2")
    .split(/[\s-]+/)
    .filter((word) => word !== "");
  if (words.length === 0) return failed("The sum in words is empty; expected for example “one million dollars”.");
  const reader = new SumReader();
  for (const word of words) {
    if (!reader.takes(word)) {
      return failed(
        `“${text}” was read as a sum in words; “${word}” is not understood there. Expected for example “one million two hundred thousand dollars”.`,
      );
    }
  }
  return succeeded(reader.cents());
}

/** What has been read of a sum so far: whole units, the group under a thousand, and cents once units are closed. */
class SumReader {
  #whole = 0;
  #group = 0;
  #units: number | null = null;
  #hundredths = 0;

  /** Whether the word continues a sum. */
  takes(word: string): boolean {
    const fraction = /^(\d{1,2}|no|xx)\/(100|xx)$/.exec(word);
    if (fraction !== null) {
      this.#close();
      this.#hundredths = Number(fraction[1]) || 0;
      return true;
    }
    if (word === "and" || word === "a" || word === "of") return true;
    if (units.test(word)) {
      this.#close();
      return true;
    }
    if (cents.test(word)) {
      this.#hundredths = this.#whole + this.#group;
      [this.#whole, this.#group] = [0, 0];
      return this.#units !== null || this.#hundredths < 100;
    }
    return this.#takesNumber(word);
  }

  cents(): number {
    const open = this.#whole + this.#group;
    return (this.#units ?? open) * 100 + this.#hundredths;
  }

  #close(): void {
    if (this.#units === null) this.#units = this.#whole + this.#group;
    [this.#whole, this.#group] = [0, 0];
  }

  #takesNumber(word: string): boolean {
    const small = ones[word] ?? tens[word];
    if (small !== undefined && Object.hasOwn({ ...ones, ...tens }, word)) {
      this.#group += small;
      return true;
    }
    if (word === "hundred") {
      this.#group = (this.#group || 1) * 100;
      return true;
    }
    const scale = Object.hasOwn(scales, word) ? scales[word] : undefined;
    if (scale === undefined) return false;
    this.#whole += (this.#group || 1) * scale;
    this.#group = 0;
    return true;
  }
}
