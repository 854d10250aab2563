/** The fields of one kind of a union with the text each starts with; "kind" itself is not among them. */
export type KindTemplate = Readonly<Record<string, unknown>>;

/**
 * A value of another kind: it has exactly the fields of that kind. Where something was typed under the same name, for
 * whichever kind, that text stays.
 */
export function ofKind(kind: string, template: KindTemplate, typed: KindTemplate): KindTemplate {
  const fields = Object.entries(template).map(([name, text]) => [name, typed[name] ?? text]);
  return { kind, ...Object.fromEntries(fields) };
}
