/** What dependency-cruiser tells of one file. */
export type CruisedModule = Readonly<{
  source: string;
  dependencies: readonly Readonly<{ resolved: string; dependencyTypes: readonly string[] }>[];
}>;

/** What must never run in a browser. */
const serverOnly =
  /^(lib\/store\/|node_modules\/(kysely|pg|better-sqlite3)\/|(node:)?(fs|crypto|path|child_process|os|net)(\/|$))/;

/**
 * Chains of imports by which a file marked “use client” reaches what belongs to the server.
 * Type imports are erased, and a “use server” file is called over the network, so neither counts.
 */
export function leavesReaching(modules: readonly CruisedModule[], textOf: (path: string) => string): string[] {
  const byPath = new Map(modules.map((module) => [module.source, module]));
  const isMarked = (path: string, mark: string) => /^(app|lib)\//.test(path) && textOf(path).startsWith(`"${mark}"`);

  function chain(path: string, seen: Set<string>): string | undefined {
    if (serverOnly.test(path)) return path;
    if (seen.has(path) || isMarked(path, "use server")) return undefined;
    seen.add(path);
    for (const { resolved, dependencyTypes } of byPath.get(path)?.dependencies ?? []) {
      const rest = dependencyTypes.includes("type-only") ? undefined : chain(resolved, seen);
      if (rest) return `${path} → ${rest}`;
    }
    return undefined;
  }

  return modules
    .map(({ source }) => source)
    .filter((path) => isMarked(path, "use client"))
    .flatMap((path) => chain(path, new Set()) ?? []);
}
