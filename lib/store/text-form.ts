import type { Refusal } from "./model";

/** Largest body and draft in bytes of UTF-8. A bid of 300 claims with the bidder's words takes about 200 000. */
const largestText = 524_288;

/** NUL, which PostgreSQL cannot hold, and half surrogate pairs, which UTF-8 and RFC 8785 cannot. */
const notStorable = /\0|\p{Cs}/u;

/** The JSON text of a form as it will be stored, or why it is not taken. `allow` says which texts may stand in it. */
export function textOf(
  form: unknown,
  allow: "storable-text" | "any-text",
): Readonly<{ kind: "text"; text: string } | { kind: "refused"; because: Refusal }> {
  const text = JSON.stringify(form);
  if (text === undefined) throw new TypeError(`a form is a JSON value, got ${typeof form}`);
  const bytes = Buffer.byteLength(text, "utf8");
  if (bytes > largestText) return { kind: "refused", because: { kind: "too-large", bytes, limit: largestText } };
  const because = allow === "any-text" ? null : unstorable(form, []);
  return because === null ? { kind: "text", text } : { kind: "refused", because };
}

/** The first text in a JSON value that cannot be stored, keys included. */
export function unstorable(value: unknown, path: readonly string[]): Refusal | null {
  if (typeof value === "string") {
    const codePoint = notStorable.exec(value)?.[0].codePointAt(0);
    return codePoint === undefined ? null : { kind: "text-not-storable", path, codePoint };
  }
  if (typeof value !== "object" || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = unstorable(key, [...path, key]) ?? unstorable(inner, [...path, key]);
    if (found) return found;
  }
  return null;
}

/** Says what was read and what to do about it. */
export function explainRefusal(refusal: Refusal): string {
  switch (refusal.kind) {
    case "too-large":
      return `This takes ${kilobytes(refusal.bytes)} kB; up to ${kilobytes(refusal.limit)} kB can be saved. Shorten the longest texts.`;
    case "too-many-documents":
      return `The project holds ${refusal.documents} documents; up to ${refusal.limit} can be saved at once.`;
    case "given-out":
      return "What was given out stays as it was. Give out an addendum that says what changes.";
    case "text-not-storable": {
      const code = refusal.codePoint.toString(16).toUpperCase().padStart(4, "0");
      return `The text in “${refusal.path.join(" › ")}” holds the invisible character U+${code}, which cannot be saved. Type the text again.`;
    }
    case "rule":
      return refusal.sentence;
  }
}

const kilobytes = (bytes: number): string => Math.ceil(bytes / 1000).toString();
