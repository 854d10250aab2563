import type { z } from "zod";
import type { DocumentKind, Refused, Schemas, StoredDocument, Upgrades } from "./model";
import type { DocumentRow } from "./tables";
import { textOf } from "./text-form";

/** A body that its schema takes, as text and with its format. */
export type WrittenBody = Readonly<{ kind: "written"; text: string; format: number }>;

/** Turns bodies into stored text and back, each through its schema. */
export type Bodies<S extends Schemas> = Readonly<{
  write: <K extends DocumentKind>(kind: K, body: z.input<S[K]>) => WrittenBody | Refused;
  read: <K extends DocumentKind>(kind: K, row: DocumentRow) => StoredDocument<S, K>;
}>;

/**
 * Schemas and format upgrades of each kind, at work. `write` throws a TypeError if the schema does not take the body:
 * the caller has let it through. `read` throws an Error if a stored body is of a later format than ours or if, after
 * its upgrades, the schema does not take it: an upgrade is missing.
 */
export function bodiesOf<S extends Schemas>(schemas: S, upgrades: Upgrades): Bodies<S> {
  const formatOf = (kind: DocumentKind): number => (upgrades[kind]?.length ?? 0) + 1;

  const upgraded = (kind: DocumentKind, row: DocumentRow): unknown => {
    if (row.format > formatOf(kind)) {
      const place = `${row.project_id}/${kind}/${row.id}`;
      throw new Error(`${place} has format ${row.format}; this Evenfield reads up to format ${formatOf(kind)}`);
    }
    const ahead = (upgrades[kind] ?? []).slice(row.format - 1);
    return ahead.reduce((body, upgrade) => upgrade(body), JSON.parse(row.body));
  };

  return {
    write(kind, body) {
      const form = textOf(body, "storable-text");
      if (form.kind === "refused") return form;
      const parsed = schemas[kind].safeParse(JSON.parse(form.text));
      if (!parsed.success) throw new TypeError(`a ${kind} was sent to the store unparsed: ${parsed.error.message}`);
      return { kind: "written", text: form.text, format: formatOf(kind) };
    },
    read<K extends DocumentKind>(kind: K, row: DocumentRow): StoredDocument<S, K> {
      const body = upgraded(kind, row);
      const parsed = schemas[kind].safeParse(body);
      if (!parsed.success) {
        const place = `${row.project_id}/${kind}/${row.id}`;
        throw new Error(`${place}, stored in format ${row.format}, is not read by its schema: ${parsed.error.message}`);
      }
      return {
        kind,
        id: row.id,
        version: row.version,
        position: row.position,
        updatedAt: row.updated_at,
        updatedBy: row.updated_by,
        // The schema has just taken it, so it is what the schema takes.
        body: body as z.input<S[K]>,
        model: parsed.data,
      };
    },
  };
}
