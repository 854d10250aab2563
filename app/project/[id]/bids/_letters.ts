const alphabet = Array.from({ length: 26 }, (_, index) => String.fromCharCode(65 + index));
const inOrder = [...alphabet, ...alphabet.flatMap((first) => alphabet.map((second) => first + second))];

/** The first letter that no bid has: A to Z, then AA, AB and so on. */
export function nextLetter(taken: readonly string[]): string {
  const free = inOrder.find((letter) => !taken.includes(letter));
  if (free === undefined) throw new RangeError("more bids than letters");
  return free;
}
