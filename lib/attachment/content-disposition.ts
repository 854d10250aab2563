/** What RFC 8187 lets stand as it is in a value of an extended parameter. */
const plain = /[A-Za-z0-9!#$&+.^_`|~-]/;

const encoded = (name: string): string =>
  Array.from(new TextEncoder().encode(name), (byte) => {
    const letter = String.fromCharCode(byte);
    return plain.test(letter) ? letter : `%${byte.toString(16).toUpperCase().padStart(2, "0")}`;
  }).join("");

/** The header that says under which name a file is saved, or that it is shown. @source RFC 6266, RFC 8187 */
export function contentDisposition(how: "attachment" | "inline", name: string): string {
  const fallback = name
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[^\x20-\x7e]/g, "_")
    .replace(/["\\%]/g, "_");
  return `${how}; filename="${fallback}"; filename*=UTF-8''${encoded(name)}`;
}
