import { fieldChanges, heldParts, type Lock } from "#lib/procedure";

/** A document as text and as what the text means; both undefined where it does not stand. */
type Read = Readonly<{ text: unknown; model: unknown }>;

const mostFields = 20;

/**
 * The entries of what a lock holds that a change would move, as people read them. A form fills in what was never written;
 * where that means the same as before it is no change and not told.
 */
export function heldFields(lock: Lock, before: Read, after: Read): readonly string[] {
  const fields = (part: keyof Read) =>
    fieldChanges(heldParts(lock, before[part]), heldParts(lock, after[part])).map(({ field }) => field);
  const meant = fields("model");
  const typed = fields("text");
  const moved = typed.filter((field) => meant.some((one) => one.startsWith(field) || field.startsWith(one)));
  const told = [moved, typed, meant].find((some) => some.length > 0) ?? [];
  return told.slice(0, mostFields);
}
