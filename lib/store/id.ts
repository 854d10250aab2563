import { randomBytes } from "node:crypto";

/** 32 digits and letters without i, l, o and u, which are easily misread. */
const alphabet = "0123456789abcdefghjkmnpqrstvwxyz";

/** A new id of 12 characters, 60 random bits. */
export const randomId = (): string => Array.from(randomBytes(12), (byte) => alphabet[byte % 32]).join("");

/** True for what may serve as an id of a project or document: 1 to 64 of a–z, 0–9 and inner hyphens. */
export const isId = (text: string): boolean => /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/.test(text);
