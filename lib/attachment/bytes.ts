/** The first place of a pattern of bytes at or behind `from`; -1 where there is none before `until`. */
export function placeOf(bytes: Uint8Array, pattern: Uint8Array, from = 0, until = bytes.length): number {
  const [first] = pattern;
  if (first === undefined) return from;
  const last = until - pattern.length;
  let at = bytes.indexOf(first, from);
  while (at !== -1 && at <= last) {
    if (pattern.every((byte, index) => bytes[at + index] === byte)) return at;
    at = bytes.indexOf(first, at + 1);
  }
  return -1;
}

/** ASCII as bytes. */
export const ascii = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

export const startsWith = (bytes: Uint8Array, pattern: Uint8Array, at = 0): boolean =>
  bytes.length >= at + pattern.length && pattern.every((byte, index) => bytes[at + index] === byte);

/** A big-endian number of two bytes; 0 beyond the end. */
export const uint16 = (bytes: Uint8Array, at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);

/** A big-endian number of four bytes; 0 beyond the end. */
export const uint32 = (bytes: Uint8Array, at: number): number => uint16(bytes, at) * 0x10000 + uint16(bytes, at + 2);
