import type { Other } from "./news";

/** Who else has a page open, each once with the time they came: “Ada Brook, since 10:42 AM”. Empty where nobody has. */
export function othersInWords(others: readonly Other[], clock: (at: string) => string): string {
  const own = others.some(({ isSame }) => isSame) ? ["you, in another window"] : [];
  const first = new Map<string, string>();
  for (const { name, since, isSame } of others) {
    const known = first.get(name);
    if (!isSame && (known === undefined || since < known)) first.set(name, since);
  }
  return [...[...first].map(([name, since]) => `${name}, since ${clock(since)}`), ...own].join("; ");
}
