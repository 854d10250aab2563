import { createCipheriv, createDecipheriv, randomBytes } from "node:crypto";
import type { Transaction } from "kysely";
import type { Sealed } from "#lib/procedure";
import type { ActSetting } from "./guard";
import type { Tables } from "./tables";

/*
 * What is sealed is unreadable wherever it lies: in its document, in the record, in an export, in a copy of the tables
 * document and record. The key lies in the table seal alone, until an act opens the lock and writes the key into a document; from
 * then on anybody can hold what was sealed against what was opened.
 *
 * A sealed text is AES-256-GCM (NIST SP 800-38D) over the UTF-8 bytes of the JSON object {"of", "value"}, filled up with
 * spaces to a whole number of 1,024 bytes, so that its length tells little; without additional data. `nonce` are the 12 bytes of the
 * initialisation vector, `text` the sealed bytes with the 16 bytes of the tag behind them, both as base64url.
 */

const algorithm = "AES-256-GCM";
const cipher = "aes-256-gcm";
const block = 1024;
const tagBytes = 16;

/** The keys of one project's locks at work within one change. */
export type Seals = Pick<ActSetting<never>, "seal" | "unseal" | "keyOf"> &
  Readonly<{
    /** Writes the keys that were made meanwhile. */
    keep: () => Promise<void>;
  }>;

/** The locks of a project that the transaction has taken the lock on. */
export async function sealsOf(transaction: Transaction<Tables>, project: string): Promise<Seals> {
  const rows = await transaction.selectFrom("seal").selectAll().where("project_id", "=", project).execute();
  const keys = new Map(rows.map(({ lock, key }) => [lock, key]));
  const made = new Map<string, string>();
  const keyOf = (lock: string): string => keys.get(lock) ?? made.get(lock) ?? "";
  return {
    keyOf,
    seal(lock, of, value) {
      if (keyOf(lock) === "") made.set(lock, randomBytes(32).toString("base64url"));
      return sealed(keyOf(lock), { of, value });
    },
    unseal(lock, of, text) {
      const opened = unsealed(keyOf(lock), text);
      if (opened.of !== of) throw new Error(`what lies in ${of} was sealed for ${opened.of}`);
      return opened.value;
    },
    async keep() {
      for (const [lock, key] of made)
        await transaction.insertInto("seal").values({ project_id: project, lock, key }).execute();
    },
  };
}

type Contents = Readonly<{ of: string; value: unknown }>;

function sealed(key: string, contents: Contents): Sealed {
  const plain = Buffer.from(JSON.stringify(contents), "utf8");
  const padded = Buffer.concat([plain, Buffer.alloc(block - (plain.length % block), " ")]);
  const nonce = randomBytes(12);
  const locking = createCipheriv(cipher, Buffer.from(key, "base64url"), nonce);
  const text = Buffer.concat([locking.update(padded), locking.final(), locking.getAuthTag()]);
  return { algorithm, nonce: nonce.toString("base64url"), text: text.toString("base64url") };
}

/** @throws Error if key and text do not belong together, or the text was altered */
function unsealed(key: string, { nonce, text }: Sealed): Contents {
  const bytes = Buffer.from(text, "base64url");
  const opening = createDecipheriv(cipher, Buffer.from(key, "base64url"), Buffer.from(nonce, "base64url"));
  opening.setAuthTag(bytes.subarray(-tagBytes));
  const plain = Buffer.concat([opening.update(bytes.subarray(0, -tagBytes)), opening.final()]);
  return JSON.parse(plain.toString("utf8"));
}
