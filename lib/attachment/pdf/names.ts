/** Bytes that end a name: white space and delimiters. @source ISO 32000-1 7.2.2 */
const ends = new Uint8Array(256);
for (const code of [0, 9, 10, 12, 13, 32, ...Array.from("()<>[]{}/%", (letter) => letter.charCodeAt(0))])
  ends[code] = 1;

const longestName = 127; // bytes, as Annex C of ISO 32000-1 has it

const hexadecimal = /#([0-9a-f]{2})/gi;

/**
 * Every name in a stretch of bytes with the place behind it: “/Type” gives “Type”. A letter may be written as “#” and two
 * hexadecimal digits, which readers take for the letter, so it is turned back. @source ISO 32000-1 7.3.5
 */
export function* namesIn(
  bytes: Uint8Array,
  from = 0,
  until = bytes.length,
): Generator<Readonly<{ name: string; end: number }>> {
  let at = bytes.indexOf(0x2f, from);
  while (at !== -1 && at < until) {
    let end = at + 1;
    while (end < until && end - at <= 3 * longestName && ends[bytes[end] ?? 0] === 0) end += 1;
    const written = String.fromCharCode(...bytes.subarray(at + 1, end));
    const name = written.includes("#")
      ? written.replace(hexadecimal, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)))
      : written;
    yield { name, end };
    at = bytes.indexOf(0x2f, end);
  }
}
