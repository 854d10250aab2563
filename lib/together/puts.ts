import { areOfOneKind, isBranch, isSame, own } from "./same";

/** A value to be put into a form; `path` as forms name fields, with dots and entries of lists counted from 0. */
export type Put = Readonly<{ path: string; value: unknown }>;

const idsOf = (list: readonly unknown[]) => list.map((entry) => (isBranch(entry) ? own(entry, "id") : undefined));

/**
 * What has to be put into a form, and where, so that it holds another text: as little as can be, so that fields that
 * stay are not touched. A list that grew, shrank or was put in another order is put whole.
 */
export function puts(now: unknown, next: unknown, path = ""): readonly Put[] {
  if (isSame(now, next)) return [];
  const below = (key: string | number) => (path === "" ? String(key) : `${path}.${key}`);
  if (isBranch(now) && isBranch(next) && areOfOneKind(now, next))
    return [...new Set([...Object.keys(now), ...Object.keys(next)])].flatMap((key) =>
      puts(own(now, key), own(next, key), below(key)),
    );
  if (Array.isArray(now) && Array.isArray(next) && now.length === next.length && isSame(idsOf(now), idsOf(next)))
    return next.flatMap((entry, index) => puts(now[index], entry, below(index)));
  return [{ path, value: next }];
}
