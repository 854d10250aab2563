/** "one", "one and two", "one, two and three". */
export const listed = (items: readonly string[], joint: "and" | "or" = "and"): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} ${joint} ${items.at(-1)}`;
