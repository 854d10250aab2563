/** Whoever has given no name has this id, so no name may lead to it. */
const taken = "local";

/** Names that their id spells out, so that two of them never share one: words of plain letters and digits. */
const plainName = /^[a-z0-9]+(?: [a-z0-9]+)*$/;

const mostSpelled = 40;

/**
 * The id that stands for a name where nobody signs in: 1 to 64 of a–z, 0–9 and inner hyphens. Names that differ in case
 * or spaces only are one name. A name that can't be spelled out ends in a checksum, so that unlike names get unlike ids
 * but for chance; nothing rests on that, as anybody may give any name.
 */
export function idOfName(name: string): string {
  const folded = name.normalize("NFC").toLowerCase().trim().replace(/\s+/gu, " ");
  const spelled = folded
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, mostSpelled)
    .replace(/^-+|-+$/g, "");
  if (plainName.test(folded) && folded.length <= mostSpelled && folded !== taken) return spelled;
  return `${spelled === "" ? "person" : spelled}-${checksum(folded)}`;
}

/** @source FNV-1a, 32 bits, over UTF-16 code units */
function checksum(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, "0");
}
