/** Text cut into lines between words, for drawings, where text does not wrap by itself. A longer word keeps its line. */
export function wrappedWords(text: string, longest: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= longest) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
