import { entriesOf } from "./entries";
import { isBranch, own } from "./same";

/**
 * The path of a field, once a list that it stands in has other entries before it; entries go by their ids. Null where its
 * entry is no longer there.
 */
export function pathIn(path: string, from: unknown, to: unknown): string | null {
  const steps: string[] = [];
  let [before, after] = [from, to];
  for (const key of path.split(".")) {
    const [was, is] = [entriesOf(before), entriesOf(after)];
    const id = was === null ? undefined : [...was.keys()][Number(key)];
    const place = id === undefined || is === null ? Number(key) : [...is.keys()].indexOf(id);
    if (place < 0) return null;
    steps.push(Array.isArray(before) ? String(place) : key);
    [before, after] = [below(before, key), below(after, Array.isArray(after) ? String(place) : key)];
  }
  return steps.join(".");
}

function below(value: unknown, key: string): unknown {
  if (Array.isArray(value)) return value[Number(key)];
  return isBranch(value) ? own(value, key) : undefined;
}
