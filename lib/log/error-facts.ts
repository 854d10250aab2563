import type { LogFacts } from "./model";

const own = (value: object, key: string): unknown =>
  key in value ? (value as Record<string, unknown>)[key] : undefined;
const text = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);

/**
 * What may be told of an error: its kind, its code, where in the program it was made, and the digest that the page shows
 * to whoever met it. Not its message, which may hold what somebody typed, as those of databases do.
 */
export function errorFacts(problem: unknown): LogFacts {
  if (typeof problem !== "object" || problem === null) return { error: typeof problem };
  const causes = own(problem, "cause");
  return {
    error: text(own(problem, "name")) ?? "Error",
    code: text(own(problem, "code")),
    digest: text(own(problem, "digest")),
    where: whereMade(text(own(problem, "stack")) ?? ""),
    ...(causes === undefined ? {} : { causedBy: errorFacts(causes).error, causeCode: errorFacts(causes).code }),
  };
}

/** The first line of a stack within the program, from its own folder on. */
function whereMade(stack: string): string | undefined {
  for (const line of stack.split("\n")) {
    const found = /\bat\b.*?((?:\.next|app|lib)\/[\w./[\]-]+:\d+:\d+)\)?$/.exec(line);
    if (found && !line.includes("node_modules")) return found[1];
  }
  return undefined;
}
