/** One text that differs; empty where nothing stood or stands. */
export type TextChange = Readonly<{ field: string; from: string; to: string }>;

/** What importing a form does to one entry of a bid. */
export type FormChange = Readonly<{
  part: "The bid" | "Infill" | "Claims" | "Prices";
  /** What the entry is about: "Pile height, new". */
  what: string;
  /** "gone" is what the bid holds and the form does not. */
  kind: "added" | "changed" | "gone" | "unchanged";
  texts: readonly TextChange[];
}>;

/** The fields of an entry as people read them, by their headings. */
export type EntryTexts = Readonly<Record<string, string>>;

/** The texts in which two entries differ, in the order of the second. */
export function textChanges(before: EntryTexts, after: EntryTexts): readonly TextChange[] {
  const fields = [...new Set([...Object.keys(after), ...Object.keys(before)])];
  return fields
    .map((field) => ({ field, from: before[field] ?? "", to: after[field] ?? "" }))
    .filter(({ from, to }) => from !== to);
}
